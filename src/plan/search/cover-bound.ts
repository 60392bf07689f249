import type { Problem } from './problem.ts';
import { has, type Words } from './sets.ts';

/** A lower bound on the packed cost still to come, for a patient in a position with a set of items done. */
export type Bound = (position: number, done: Words, at: number) => number;

/** Positions beyond this number are left out of the bound: its tables grow with 2 to that power. */
const mostPositions = 14;

/**
 * Least cost of a walk from each position that calls at every position of each set: `from × sets + set`.
 * A walk costs no less for a larger set, so the table is filled from the small sets up.
 */
function walks(cost: Float64Array, stride: number, count: number): Float64Array {
  const sets = 2 ** count;
  const walk = new Float64Array(count * sets);
  for (let set = 1; set < sets; set++)
    for (let from = 0; from < count; from++) {
      const rest = set & ~(1 << from);
      let least = rest === 0 ? 0 : Infinity;
      for (let to = 0; to < count; to++)
        if ((rest >> to) & 1)
          least = Math.min(least, cost[from * stride + to]! + walk[to * sets + (rest & ~(1 << to))]!);
      walk[from * sets + set] = least;
    }
  return walk;
}

/** As `walks`, but the patient leaves the first position at once: a set that holds it asks for a return. */
function departures(cost: Float64Array, stride: number, count: number): Float64Array {
  const sets = 2 ** count;
  const walk = walks(cost, stride, count);
  const leave = new Float64Array(count * sets).fill(Infinity);
  for (let from = 0; from < count; from++)
    for (let set = 0; set < sets; set++)
      for (let to = 0; set > 0 && to < count; to++)
        if (to !== from)
          leave[from * sets + set] = Math.min(
            leave[from * sets + set]!,
            cost[from * stride + to]! + walk[to * sets + (set & ~(1 << to))]!,
          );
  for (let from = 0; from < count; from++) leave[from * sets] = 0;
  return leave;
}

/** Cheapest of the sets that hold `must` and meet every mask of `open`. */
function cheapest(leave: Float64Array, first: number, must: number, open: readonly number[], all: number): number {
  if (open.length === 0) return leave[first + must]!;
  let least = Infinity;
  const spare = all & ~must;
  for (let more = spare; more > 0; more = (more - 1) & spare) {
    const cost = leave[first + (must | more)]!;
    if (cost < least && open.every((mask) => (mask & more) !== 0)) least = cost;
  }
  return least;
}

/** What the bound needs to know of the changes alone: the same for every part of a problem. */
export interface Departures {
  leave: Float64Array;
  /** Positions taken into account, as bits. */
  all: number;
}

/** Prepares the bound for a problem and its parts. */
export function departuresOf(problem: Problem): Departures {
  const stride = problem.positions.length;
  const count = Math.min(stride, mostPositions);
  return { leave: departures(problem.cost, stride, count), all: 2 ** count - 1 };
}

/** How many stages can be done one after the other without leaving the position. */
function begunHere(stages: readonly number[], position: number): number {
  const first = stages.findIndex((mask) => ((mask >> position) & 1) === 0);
  return first < 0 ? stages.length : first;
}

/**
 * The bound by positions still to be called at, orders forgotten: what is possible here is done, so every item left
 * asks for an arrival; only the first stages of an item of several may be done where the patient is.
 */
export function coverBound(problem: Problem, { leave, all }: Departures): Bound {
  return (position, done, at) => {
    if (1 << position > all) return 0;
    let must = 0;
    const several: number[] = [];
    for (let i = 0; i < problem.count; i++) {
      if (has(done, at, i)) continue;
      const stages = problem.masks[i]!;
      for (let k = stages.length > 1 ? begunHere(stages, position) : 0; k < stages.length; k++) {
        const mask = stages[k]!;
        if (mask > all) continue;
        if ((mask & (mask - 1)) === 0) must |= mask;
        else several.push(mask);
      }
    }
    const open = several.filter((mask) => (mask & must) === 0);
    return cheapest(leave, position * (all + 1), must, open, all);
  };
}
