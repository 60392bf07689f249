import type { Problem } from './problem.ts';
import { has, put, within, type Words } from './sets.ts';

/** One move of the patient: to a position, or through the stages of an item of several stages. */
export interface Move {
  to: number;
  /** The item whose stages are done on the way. */
  item?: number;
  /** Position of each of its stages; the last is `to`. */
  via: readonly number[];
}

/**
 * Does everything that can be done whole without leaving the position. That never costs a change later: whatever
 * follows stays possible. Returns whether anything was done.
 */
export function doAllIn(problem: Problem, position: number, done: Words, at: number): boolean {
  const { before, words } = problem;
  let some = false;
  for (const i of problem.whole[position]!)
    if (!has(done, at, i) && within(before, i * words, done, at, words)) {
      put(done, at, i);
      some = true;
    }
  return some;
}

/** Whether an item is still to do and all that comes before it is done. */
export const isReady = (problem: Problem, i: number, done: Words, at: number): boolean =>
  !has(done, at, i) && within(problem.before, i * problem.words, done, at, problem.words);

/** A way through the stages of an item, with its packed cost. */
export interface Way extends Move {
  item: number;
  cost: number;
}

/** The cheapest way through an item's stages to each position where it can end. */
function waysFrom(problem: Problem, item: number, from: number): Way[] {
  const count = problem.positions.length;
  const start: Way = { to: from, item, via: [], cost: 0 };
  return problem.masks[item]!.reduce(
    (reached, mask) => {
      const next: Way[] = [];
      for (let to = 0; to < count; to++) {
        if (((mask >> to) & 1) === 0) continue;
        const steps = reached.map((way) => ({ way, cost: way.cost + problem.cost[way.to * count + to]! }));
        const { way, cost } = steps.reduce((a, b) => (b.cost < a.cost ? b : a));
        next.push({ to, item, via: [...way.via, to], cost });
      }
      return next;
    },
    [start],
  );
}

/** Ways through the stages of every item of several stages: `ways[item][from]`. */
export function stageWays(problem: Problem): Way[][][] {
  const ways: Way[][][] = [];
  for (const item of problem.staged) ways[item] = problem.positions.map((_, from) => waysFrom(problem, item, from));
  return ways;
}
