import type { Problem } from '../search/problem.ts';
import { put, within, type Words } from '../search/sets.ts';
import { fits, windowsOf, type Visit } from './visits.ts';

/** What an item asks of the room besides positions; items are numbered in page order. */
export interface Traits {
  /** What is uncovered, as one word. */
  exposure: string;
  /** Where the examiner stands; undefined for anywhere. */
  place: string | undefined;
  /** The instruments in hand, as one word; empty for none. */
  tools: string;
}

/** Everything that the arranging of steps looks up. */
export interface Tasks {
  problem: Problem;
  traits: readonly Traits[];
  visits: readonly Visit[];
  /** By visit and exposure: the items that may be done there. */
  here: Map<string, number[]>[];
  /** By visit: what must be done before the patient leaves it. */
  due: Words[];
  /** By visit and exposure: the items that can be done in no other visit. */
  only: Map<string, Words>[];
}

/** Prepares the arranging of items within visits. */
export function tasksOf(problem: Problem, traits: readonly Traits[], visits: readonly Visit[]): Tasks {
  const windows = windowsOf(problem, visits);
  const bridging = new Set(visits.flatMap(({ bridge }) => (bridge === undefined ? [] : [bridge.item])));
  const tasks: Tasks = {
    problem,
    traits,
    visits,
    here: visits.map(() => new Map<string, number[]>()),
    due: visits.map(() => new Uint32Array(problem.words)),
    only: visits.map(() => new Map<string, Words>()),
  };
  traits.forEach(({ exposure }, item) => {
    const { first, last } = windows[item] ?? { first: 0, last: 0 };
    const own = visits.flatMap((visit, v) => (v >= first && v <= last && fits(problem, item, visit) ? [v] : []));
    if (!bridging.has(item)) for (const v of own) listIn(tasks.here[v], exposure, item);
    if (!bridging.has(item)) for (const due of tasks.due.slice(last)) put(due, 0, item);
    if (first >= last && own.length < 2) mark(tasks.only[last], exposure, item, problem.words);
  });
  return tasks;
}

function listIn(lists: Map<string, number[]> | undefined, key: string, item: number): void {
  const list = lists?.get(key);
  if (list === undefined) lists?.set(key, [item]);
  else list.push(item);
}

function mark(sets: Map<string, Words> | undefined, key: string, item: number, words: number): void {
  const set = sets?.get(key) ?? new Uint32Array(words);
  put(set, 0, item);
  sets?.set(key, set);
}

/**
 * How often what is uncovered must still change, at least: once for each exposure that a visit alone can serve, less one
 * at each change of visit where the same may stay uncovered.
 */
export function changesLeft(
  { only, problem }: Tasks,
  visit: number,
  exposure: string | undefined,
  done: Words,
): number {
  let count = 0;
  let before = new Set(exposure === undefined ? [] : [exposure]);
  for (const sets of only.slice(visit)) {
    const open = new Set<string>();
    for (const [key, set] of sets) if (!within(set, 0, done, 0, problem.words)) open.add(key);
    if (open.size === 0) continue;
    count += open.size - ([...open].some((key) => before.has(key)) ? 1 : 0);
    before = open;
  }
  return count;
}
