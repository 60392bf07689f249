import type { Problem } from './problem.ts';
import { has, type Words } from './sets.ts';

/** A lower bound on the packed cost still to come, for a patient in a position with a set of items done. */
export type Bound = (position: number, done: Words, at: number) => number;

/** Positions beyond this number are left out of the bound: its tables grow with 2 to that power. */
const mostPositions = 14;

/** Least packed cost for a patient in a position who leaves it at once and calls at every position of a set (as bits). */
export type Leave = (from: number, set: number) => number;

/** What the bound needs to know of the changes alone: the same for every part of a problem. */
export interface Departures {
  leave: Leave;
  /** Positions taken into account, as bits. */
  all: number;
}

/** Least cost of a walk from a position that calls at every position of a set; worked out when asked for, and kept. */
function walks(cost: Float64Array, stride: number, count: number): Leave {
  const sets = 2 ** count;
  const known = new Float64Array(count * sets).fill(-1);
  const walk = (from: number, set: number): number => {
    const rest = set & ~(1 << from);
    const key = from * sets + rest;
    if (known[key]! < 0) {
      let least = rest === 0 ? 0 : Infinity;
      for (let to = 0; to < count; to++)
        if ((rest >> to) & 1) least = Math.min(least, cost[from * stride + to]! + walk(to, rest));
      known[key] = least;
    }
    return known[key]!;
  };
  return walk;
}

/** Prepares the bound for a problem and its parts. A set that holds the position left asks for a return. */
export function departuresOf({ positions, cost }: Problem): Departures {
  const stride = positions.length;
  const count = Math.min(stride, mostPositions);
  const walk = walks(cost, stride, count);
  const sets = 2 ** count;
  const known = new Float64Array(count * sets).fill(-1);
  const leave = (from: number, set: number): number => {
    const key = from * sets + set;
    if (known[key]! < 0) {
      let least = set === 0 ? 0 : Infinity;
      for (let to = 0; set > 0 && to < count; to++)
        if (to !== from) least = Math.min(least, cost[from * stride + to]! + walk(to, set));
      known[key] = least;
    }
    return known[key]!;
  };
  return { leave, all: sets - 1 };
}

/** Cheapest of the sets that hold `must` and meet every mask of `open`. */
function cheapest(leave: Leave, from: number, must: number, open: readonly number[], all: number): number {
  if (open.length === 0) return leave(from, must);
  let least = Infinity;
  const spare = all & ~must & open.reduce((union, mask) => union | mask, 0);
  for (let more = spare; more > 0; more = (more - 1) & spare)
    if (open.every((mask) => (mask & more) !== 0)) least = Math.min(least, leave(from, must | more));
  return least;
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
    return cheapest(leave, position, must, open, all);
  };
}
