import { chainsOf } from './chains.ts';
import type { Problem } from '../search/problem.ts';
import { bitCount, put, type Words } from '../search/sets.ts';
import { fits, windowsOf, type Visit, type Window } from './visits.ts';

/** What an item asks of the room besides positions; items are numbered in page order. */
export interface Traits {
  /** What is uncovered, as one word. */
  exposure: string;
  /** Where the examiner stands; undefined for anywhere. */
  place: string | undefined;
  /** The instruments in hand, as one word; empty for none. */
  tools: string;
}

/** Items that share an exposure (or a place of the examiner) and the visits in which they can be done. */
export interface Mark {
  /** Visits as bits; the last bit stands for all from there on. */
  visits: number;
  set: Words;
  /** Items of the set that each ask for an arrival of their own. */
  chain: number[];
}

/** What a bound counts arrivals of: exposures, or places of the examiner. */
export interface Marks {
  /** By exposure or place: its marks, those of the fewest visits first. */
  of: Mark[][];
}

/** Everything that the arranging of steps looks up. */
export interface Tasks {
  problem: Problem;
  visits: readonly Visit[];
  /** By item: its exposure, its place (`nowhere` for anywhere), its instruments (`nowhere` for none), as numbers. */
  exposure: Int32Array;
  place: Int32Array;
  tools: Int32Array;
  /** By visit and exposure: the items that may be done there, predecessors first. */
  here: number[][][];
  /** By visit: what must be done before the patient leaves it. */
  due: Words[];
  exposures: Marks;
  places: Marks;
}

/** The number that stands for no place and no instrument. */
export const nowhere = -1;

/** Numbers the different words of a list in order of appearance; undefined and the blank given stand for none. */
function numbered(words: readonly (string | undefined)[], blank?: string): Int32Array {
  const numbers = new Map<string, number>();
  const numberOf = (word: string): number => {
    const number = numbers.get(word) ?? numbers.size;
    numbers.set(word, number);
    return number;
  };
  return Int32Array.from(words, (word) => (word === undefined || word === blank ? nowhere : numberOf(word)));
}

/** Prepares the arranging of items within visits. */
export function tasksOf(problem: Problem, traits: readonly Traits[], visits: readonly Visit[]): Tasks {
  const windows = windowsOf(problem, visits);
  const exposure = numbered(traits.map((one) => one.exposure));
  const place = numbered(traits.map((one) => one.place));
  const own = Array.from({ length: problem.count }, (_, item) => visitsFor(problem, item, visits, windows[item]!));
  const bridging = new Set(visits.flatMap(({ bridge }) => (bridge === undefined ? [] : [bridge.item])));
  const free = problem.order.filter((item) => !bridging.has(item));
  return {
    problem,
    visits,
    exposure,
    place,
    tools: numbered(
      traits.map((one) => one.tools),
      '',
    ),
    here: visits.map((_, v) => byExposure(free, exposure, (item) => own[item]!.includes(v))),
    due: visits.map((_, v) =>
      setOf(
        problem,
        free.filter((item) => windows[item]!.last <= v),
      ),
    ),
    exposures: marksOf(problem, exposure, own),
    places: marksOf(problem, place, own),
  };
}

/** The visits in which an item may stand; one that bridges visits counts where it begins. */
function visitsFor(problem: Problem, item: number, visits: readonly Visit[], { first, last }: Window): number[] {
  if (first > last || visits[last]?.bridge?.item === item) return [last];
  return visits.flatMap((visit, v) => (v >= first && v <= last && fits(problem, item, visit) ? [v] : []));
}

function byExposure(items: readonly number[], exposure: Int32Array, isHere: (item: number) => boolean): number[][] {
  const lists: number[][] = Array.from({ length: Math.max(-1, ...exposure) + 1 }, () => []);
  for (const item of items) if (isHere(item)) lists[exposure[item]!]!.push(item);
  return lists;
}

function setOf({ words }: Problem, items: readonly number[]): Words {
  const set = new Uint32Array(words);
  for (const item of items) put(set, 0, item);
  return set;
}

/** Bits of a number that stand for one visit each. */
export const mostVisits = 30;

/** This visit and all that follow it, as bits. */
export const bitsFrom = (visit: number): number => -1 << Math.min(visit, mostVisits);

/** Whether of some visits only one is left from `from` on, and that is `visit`. */
export const isOnly = (bits: number, from: number, visit: number): boolean =>
  visit < mostVisits && (bits & bitsFrom(from)) === 1 << visit;

/** Visits as bits. */
const visitBits = (visits: readonly number[]): number =>
  visits.reduce((bits, visit) => bits | (1 << Math.min(visit, mostVisits)), 0);

function marksOf(problem: Problem, keys: Int32Array, own: readonly (readonly number[])[]): Marks {
  const of: Map<number, number[]>[] = Array.from(
    { length: Math.max(-1, ...keys) + 1 },
    () => new Map<number, number[]>(),
  );
  for (const item of problem.order) {
    const key = keys[item]!;
    if (key === nowhere) continue;
    const visits = visitBits(own[item]!);
    of[key]!.set(visits, [...(of[key]!.get(visits) ?? []), item]);
  }
  const chainOf = chainsOf(problem, keys);
  const marks = of.map((groups) =>
    [...groups]
      .map(([visits, items]) => ({ visits, set: setOf(problem, items), chain: chainOf(items) }))
      .sort((a, b) => bitCount(a.visits) - bitCount(b.visits)),
  );
  return { of: marks };
}
