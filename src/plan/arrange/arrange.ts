import type { Move } from '../search/moves.ts';
import { isReady } from '../search/moves.ts';
import type { Problem } from '../search/problem.ts';
import { within } from '../search/sets.ts';
import { doRun, exposureUnit, place, type Draft, type Placed } from './runs.ts';
import { changesLeft, tasksOf, type Tasks, type Traits } from './tasks.ts';
import { visitsOf } from './visits.ts';

/** How many drafts of equal length are kept. */
const width = 16;

/**
 * Puts the items in order within the visits of a path: as little uncovering and covering again as can be found, then few
 * moves of the examiner, few changes of instrument, then page order. All orders are kept. A search that keeps the most
 * promising drafts: good and repeatable, not proven best.
 * @param traits of each item, in page order
 */
export function arrange(problem: Problem, path: readonly Move[], traits: readonly Traits[]): Placed[] {
  const tasks = tasksOf(problem, traits, visitsOf(path));
  const byCount: Draft[][] = Array.from({ length: problem.count + 1 }, () => []);
  byCount[0]?.push(emptyDraft(problem));
  for (const level of byCount.slice(0, -1))
    for (const draft of mostPromising(tasks, level))
      for (const next of continued(tasks, draft)) byCount[next.count]?.push(next);
  const [best] = mostPromising(tasks, byCount.at(-1) ?? []);
  if (best === undefined) throw new Error('no arrangement was found');
  return stepsOf(best);
}

function emptyDraft(problem: Problem): Draft {
  const done = new Uint32Array(problem.words);
  return { visit: 0, exposure: undefined, place: undefined, tools: '', done, count: 0, cost: 0, last: undefined };
}

function mostPromising(tasks: Tasks, level: readonly Draft[]): Draft[] {
  const promise = (draft: Draft): number =>
    draft.cost + exposureUnit * changesLeft(tasks, draft.visit, draft.exposure, draft.done);
  const ranked = level.map((draft) => ({ draft, promise: promise(draft) })).sort((a, b) => a.promise - b.promise);
  const best = new Map<string, Draft>();
  for (const { draft } of ranked) {
    const key = [draft.visit, draft.exposure, draft.place, draft.tools, draft.done.join()].join('|');
    if (!best.has(key)) best.set(key, draft);
    if (best.size === width) break;
  }
  return [...best.values()];
}

/** Every way to go on: a run in this visit or a later one that can be gone to, or an item that leads to the next. */
function continued(tasks: Tasks, draft: Draft): Draft[] {
  const next: Draft[] = [];
  for (let visit = draft.visit; visit < tasks.visits.length; visit++) {
    const here = { ...draft, visit };
    next.push(...runsIn(tasks, here));
    const due = tasks.due[visit];
    if (due !== undefined && !within(due, 0, draft.done, 0, tasks.problem.words)) break;
    const bridge = tasks.visits[visit]?.bridge;
    if (bridge === undefined) continue;
    if (isReady(tasks.problem, bridge.item, draft.done, 0)) next.push(across(tasks, here, bridge));
    break;
  }
  return next;
}

function runsIn(tasks: Tasks, draft: Draft): Draft[] {
  const runs: Draft[] = [];
  for (const [exposure, items] of tasks.here[draft.visit] ?? []) {
    const ready = items.filter((item) => isReady(tasks.problem, item, draft.done, 0));
    for (const at of new Set(ready.map((item) => tasks.traits[item]?.place ?? draft.place))) {
      const run = { ...draft, done: draft.done.slice() };
      doRun(tasks, run, exposure, at);
      runs.push(run);
    }
  }
  return runs;
}

function across(tasks: Tasks, draft: Draft, { item, stages }: { item: number; stages: number[] }): Draft {
  const next = { ...draft, done: draft.done.slice(), visit: stages.at(-1) ?? draft.visit };
  place(tasks, next, { item, positions: stages.map((visit) => tasks.visits[visit]?.position ?? 0) });
  if (next.exposure !== undefined) doRun(tasks, next, next.exposure, undefined);
  return next;
}

function stepsOf(draft: Draft): Placed[] {
  const steps: Placed[] = [];
  for (let { last } = draft; last !== undefined; last = last.before) steps.unshift(last.placed);
  return steps;
}
