import { isReady } from '../search/moves.ts';
import { equal, within } from '../search/sets.ts';
import { arrivalsLeft } from './bound.ts';
import { across, doRun, emptyDraft, exposureUnit, placesOfRun, placeUnit, type Draft } from './runs.ts';
import { isClosed, isLossless } from './lossless.ts';
import { nowhere, type Tasks } from './tasks.ts';

/** Packed cost that a draft comes to at least. */
type Promise = (draft: Draft) => number;

/**
 * The best sheet that a search finds which keeps the most promising drafts of each length.
 * @param width how many are kept
 * @param most changes and moves (packed) beyond which a draft is dropped
 * @returns undefined when no draft came through
 */
export function promising(tasks: Tasks, width: number, most: number): Draft | undefined {
  const promise = promiseOf(tasks);
  const byCount: Draft[][] = Array.from({ length: tasks.problem.count + 1 }, () => []);
  byCount[0]!.push(emptyDraft(tasks));
  for (const level of byCount.slice(0, -1))
    for (const draft of best(tasks, level, promise, width, most))
      for (const next of continued(tasks, draft)) byCount[next.count]!.push(next);
  return best(tasks, byCount.at(-1)!, promise, 1, most)[0];
}

function promiseOf(tasks: Tasks): Promise {
  const exposures = arrivalsLeft(tasks, tasks.exposures);
  const places = arrivalsLeft(tasks, tasks.places);
  const free = (now: number): number => (now === nowhere ? 1 : 0);
  return ({ cost, visit, exposure, place, done }) => {
    const uncover = exposures({ visit, now: exposure, isOver: false }, done, 0) - free(exposure);
    const moves = places({ visit, now: place, isOver: false }, done, 0) - free(place);
    return cost + exposureUnit * Math.max(0, uncover) + placeUnit * Math.max(0, moves);
  };
}

function best(tasks: Tasks, level: readonly Draft[], promise: Promise, width: number, most: number): Draft[] {
  return distinct(tasks, level)
    .map((draft) => ({ draft, cost: promise(draft) }))
    .filter(({ cost }) => cost < most)
    .sort((a, b) => a.cost - b.cost)
    .slice(0, width)
    .map(({ draft }) => draft);
}

/** Of drafts that have come to the same the cheapest. */
function distinct(tasks: Tasks, level: readonly Draft[]): Draft[] {
  const found = new Map<number, Draft[]>();
  for (const draft of level) {
    const key = hash(draft);
    const alike = found.get(key) ?? [];
    const k = alike.findIndex((one) => isSame(tasks, one, draft));
    if (k < 0) alike.push(draft);
    else if (draft.cost < alike[k]!.cost) alike[k] = draft;
    if (alike.length === 1) found.set(key, alike);
  }
  return [...found.values()].flat();
}

function hash({ visit, exposure, place, tools, done }: Draft): number {
  let h = ((visit * 64 + exposure) * 16 + place) * 64 + tools;
  for (const word of done) h = Math.imul(h ^ word, 0x85ebca6b) ^ (h >>> 13);
  return h;
}

const isSame = ({ problem }: Tasks, a: Draft, b: Draft): boolean =>
  a.visit === b.visit &&
  a.exposure === b.exposure &&
  a.place === b.place &&
  a.tools === b.tools &&
  equal(a.done, 0, b.done, 0, problem.words);

/** Every way to go on: a run in this visit or a later one that can be gone to, or an item that leads to the next. */
function continued(tasks: Tasks, draft: Draft): Draft[] {
  const next: Draft[] = [];
  for (let { visit } = draft; visit < tasks.visits.length; visit++) {
    const here = { ...draft, visit };
    pushRuns(tasks, here, next);
    if (!within(tasks.due[visit]!, 0, draft.done, 0, tasks.problem.words)) break;
    const bridge = tasks.visits[visit]!.bridge;
    if (bridge === undefined) continue;
    if (isReady(tasks.problem, bridge.item, draft.done, 0)) {
      here.done = draft.done.slice();
      across(tasks, here, bridge);
      next.push(here);
    }
    break;
  }
  return next;
}

/** Adds every run in the draft's visit; only those without loss where there are any. */
function pushRuns(tasks: Tasks, draft: Draft, next: Draft[]): void {
  const { visit, exposure, done } = draft;
  const lists = tasks.here[visit]!;
  const isOver = exposure === nowhere || isClosed(tasks, visit, exposure, { set: done, at: 0 });
  const all: Draft[] = [];
  const lossless: Draft[] = [];
  for (let other = 0; other < lists.length; other++)
    for (const at of placesOfRun(tasks, draft, lists[other]!)) {
      const run = { ...draft, done: done.slice() };
      doRun(tasks, run, other, at);
      all.push(run);
      if (isOver && isFree(tasks, draft, run)) lossless.push(run);
    }
  next.push(...(lossless.length > 0 ? lossless : all));
}

const isFree = (tasks: Tasks, draft: Draft, run: Draft): boolean =>
  run.exposure !== draft.exposure &&
  run.place === draft.place &&
  isLossless(tasks, run, { set: draft.done, at: 0 }, { set: run.done, at: 0 });
