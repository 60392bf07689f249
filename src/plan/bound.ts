import { has, type Problem } from './problem.ts';

/**
 * Least cost of a walk from each position that calls at every position of each set, orders between
 * items forgotten: `walk[from * sets + set]`. Grows with the set, so it is filled from the small sets up.
 */
function walks(cost: Float64Array, count: number): Float64Array {
  const sets = 2 ** count;
  const walk = new Float64Array(count * sets);
  for (let set = 1; set < sets; set++)
    for (let from = 0; from < count; from++) {
      const rest = set & ~(1 << from);
      let least = rest === 0 ? 0 : Infinity;
      for (let to = 0; to < count; to++)
        if ((rest >> to) & 1) least = Math.min(least, cost[from * count + to]! + walk[to * sets + (rest & ~(1 << to))]!);
      walk[from * sets + set] = least;
    }
  return walk;
}

/** As `walks`, but the patient leaves the first position at once: a set that holds it asks for a return. */
function departures(problem: Problem): Float64Array {
  const count = problem.positions.length;
  const sets = 2 ** count;
  const walk = walks(problem.cost, count);
  const leave = new Float64Array(count * sets);
  for (let from = 0; from < count; from++)
    for (let set = 1; set < sets; set++) {
      let least = Infinity;
      for (let to = 0; to < count; to++)
        if (to !== from) least = Math.min(least, problem.cost[from * count + to]! + walk[to * sets + (set & ~(1 << to))]!);
      leave[from * sets + set] = least;
    }
  return leave;
}

/** Least cost of what an item and the longest chain of orders after it ask for, from each position: `item * positions + from`. */
function chains(problem: Problem): Float64Array {
  const { cost, masks, order, before, words } = problem;
  const count = problem.positions.length;
  const least = new Float64Array(masks.length * count);
  for (const i of order.toReversed()) {
    let tail = new Float64Array(count);
    for (let j = 0; j < masks.length; j++)
      if (has(before, j * words, i)) tail = tail.map((t, p) => Math.max(t, least[j * count + p]!));
    for (const mask of masks[i]!.toReversed())
      tail = tail.map((_, from) => {
        let best = Infinity;
        for (let to = 0; to < count; to++) if ((mask >> to) & 1) best = Math.min(best, cost[from * count + to]! + tail[to]!);
        return best;
      });
    least.set(tail, i * count);
  }
  return least;
}

/** A lower bound on the cost still to come, for a patient in `position` with the set of items at `at` done. */
export type Bound = (position: number, done: Uint32Array, at: number) => number;

/** The larger of two bounds: the positions that must still be called at, and the longest chain of orders. */
export function boundOf(problem: Problem): Bound {
  const count = problem.positions.length;
  const sets = 2 ** count;
  const leave = departures(problem);
  const chain = chains(problem);
  const loose: number[] = [];
  return (position, done, at) => {
    let must = 0;
    let least = 0;
    loose.length = 0;
    for (let i = 0; i < problem.masks.length; i++) {
      if (has(done, at, i)) continue;
      least = Math.max(least, chain[i * count + position]!);
      const stages = problem.masks[i]!;
      for (let k = 0; k < stages.length; k++) {
        const mask = stages[k]!;
        if (k === 0 && stages.length > 1 && (mask >> position) & 1) continue;
        if ((mask & (mask - 1)) === 0) must |= mask;
        else loose.push(mask);
      }
    }
    const open = loose.filter((mask) => (mask & must) === 0);
    if (open.length === 0) return Math.max(least, leave[position * sets + must]!);
    let cheapest = Infinity;
    const spare = sets - 1 - must;
    for (let more = spare; more > 0; more = (more - 1) & spare)
      if (leave[position * sets + (must | more)]! < cheapest && open.every((mask) => (mask & more) !== 0))
        cheapest = leave[position * sets + (must | more)]!;
    return Math.max(least, cheapest);
  };
}
