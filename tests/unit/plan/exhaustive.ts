import type { PlanItem } from '../../../src/plan/search/problem.ts';
import { present } from '../../fixtures/present.ts';

type Change = (from: string, to: string) => number;

/** The least seconds of position changes, by trying every order of the items and every position of every stage. */
export function leastOfAllOrders(items: readonly PlanItem[], change: Change, start?: string): number {
  let least = Infinity;
  const ids = new Set(items.map(({ id }) => id));
  const go = (left: readonly PlanItem[], reached: Map<string | undefined, number>): void => {
    if (left.length === 0) least = Math.min(least, ...reached.values());
    for (const item of left) {
      const waits = item.after.some((id) => ids.has(id) && left.some((one) => one.id === id));
      if (!waits)
        go(
          left.filter((one) => one !== item),
          through(item, reached, change),
        );
    }
  };
  go(items, new Map([[start, 0]]));
  return least;
}

/** The cheapest seconds of ending an item in each position, from those of beginning it. */
function through(
  item: PlanItem,
  reached: Map<string | undefined, number>,
  change: Change,
): Map<string | undefined, number> {
  return item.stages.reduce((from, stage) => {
    const next = new Map<string | undefined, number>();
    for (const to of stage)
      next.set(to, Math.min(...[...from].map(([at, seconds]) => seconds + (at === undefined ? 0 : change(at, to)))));
    return next;
  }, reached);
}

/**
 * The least seconds by spreading out from the start over (position, what is done), nearest first and one item at a time,
 * with no rule of thumb: slower than the planner, and written apart from it.
 */
export function leastBySpreading(items: readonly PlanItem[], change: Change, start?: string): number {
  const number = new Map(items.map((item, i) => [item.id, 1n << BigInt(i)]));
  const bits = items.map((item) => ({
    item,
    own: present(number.get(item.id)),
    before: item.after.reduce((set, id) => set | (number.get(id) ?? 0n), 0n),
  }));
  const all = (1n << BigInt(items.length)) - 1n;
  const best = new Map<string, number>();
  const rings = new Map<number, [string | undefined, bigint][]>();
  const open = (position: string | undefined, done: bigint, seconds: number): void => {
    const key = `${position ?? ''} ${done.toString(36)}`;
    if ((best.get(key) ?? Infinity) <= seconds) return;
    best.set(key, seconds);
    rings.set(seconds, [...(rings.get(seconds) ?? []), [position, done]]);
  };
  open(start, 0n, 0);
  for (let seconds = 0; rings.size > 0; seconds++) {
    for (let ring = rings.get(seconds); ring !== undefined; ring = rings.get(seconds)) {
      rings.delete(seconds);
      for (const [position, done] of ring) {
        if (done === all) return seconds;
        for (const { item, own, before } of bits)
          if ((done & own) === 0n && (before & done) === before)
            for (const [to, more] of through(item, new Map([[position, 0]]), change))
              open(to, done | own, seconds + more);
      }
    }
  }
  throw new Error('no order was found');
}

/**
 * The least seconds for chains of one-stage items, each chain in its order: a table over how far each chain has come and
 * where the patient is, filled step by step.
 */
export function leastOfChains(chains: readonly (readonly string[])[], change: Change): number {
  let table = new Map<string, { reached: number[]; position: string | undefined; seconds: number }>([
    ['', { reached: chains.map(() => 0), position: undefined, seconds: 0 }],
  ]);
  for (let step = 0; step < chains.flat().length; step++) {
    const next: typeof table = new Map();
    for (const { reached, position, seconds } of table.values())
      chains.forEach((chain, c) => {
        const to = chain[reached[c] ?? 0];
        if (to === undefined) return;
        const now = reached.map((n, k) => (k === c ? n + 1 : n));
        const total = seconds + (position === undefined ? 0 : change(position, to));
        const key = `${now.join()} ${to}`;
        if (total < (next.get(key)?.seconds ?? Infinity)) next.set(key, { reached: now, position: to, seconds: total });
      });
    table = next;
  }
  return Math.min(...[...table.values()].map(({ seconds }) => seconds));
}
