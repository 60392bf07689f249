import { stageWays } from './moves.ts';
import type { Problem } from './problem.ts';

/** Items that a small problem may hold: its states grow with 2 to that power. */
export const mostItems = 16;

/** Least packed cost still to come in a small problem, for a patient in a position with these items done (one bit each). */
export type SmallTable = (position: number, done: number) => number;

/**
 * Works out the least cost from any state of a small problem, orders and stages included, when it is asked for, and
 * keeps it. For a problem that holds these items and more it is a lower bound.
 */
export function smallTable(small: Problem): SmallTable {
  const { cost, before, whole, staged, order } = small;
  const count = small.positions.length;
  const all = 2 ** small.count - 1;
  const known = new Float64Array(count * (all + 1)).fill(-1);
  const ways = stageWays(small);
  const isReady = (i: number, done: number): boolean => ((done >> i) & 1) === 0 && (before[i]! & ~done) === 0;
  const doAllIn = (position: number, done: number): number =>
    whole[position]!.reduce((set, i) => (isReady(i, set) ? set | (1 << i) : set), done);
  const ahead = (from: number, done: number): number => {
    let best = Infinity;
    for (let to = 0; to < count; to++) {
      const step = cost[from * count + to]!;
      const next = to === from || step >= best ? done : doAllIn(to, done);
      if (next !== done) best = Math.min(best, step + least(to, next));
    }
    for (const i of staged)
      if (isReady(i, done))
        for (const way of ways[i]![from]!)
          if (way.cost < best) best = Math.min(best, way.cost + least(way.to, doAllIn(way.to, done | (1 << i))));
    return best;
  };
  const least = (position: number, done: number): number => {
    const key = position * (all + 1) + done;
    if (known[key]! < 0) known[key] = done === all ? 0 : ahead(position, done);
    return known[key]!;
  };
  return order.length > mostItems ? () => 0 : (position, done) => least(position, doAllIn(position, done & all));
}
