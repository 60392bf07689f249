import type { PlanItem } from '../../../src/plan/search/problem.ts';
import { present } from '../../fixtures/present.ts';
import { withDetours, type Changes } from './small-library.ts';

/** Numbers from 0 up to 1, the same for the same seed (mulberry32, public domain). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** How a random case is drawn. */
export interface Recipe {
  items: number;
  positions: number;
  /** Orders that an item has on average. */
  orders: number;
  /** Most alternatives of a stage. */
  alternatives: number;
  /** Share of items with two or three stages. */
  staged: number;
}

/** Items, positions and changes drawn from a seed. */
export interface RandomCase {
  items: PlanItem[];
  positions: string[];
  changes: Changes;
}

/** Draws a case: orders never form a circle, changes differ by direction and obey the triangle inequality. */
export function randomCase(seed: number, recipe: Recipe): RandomCase {
  const random = seeded(seed);
  const below = (n: number): number => Math.floor(random() * n);
  const positions = Array.from({ length: recipe.positions }, (_, p) => `p${p}`);
  const changes = withDetours(
    Object.fromEntries(
      positions.map((from) => [
        from,
        Object.fromEntries(positions.filter((to) => to !== from).map((to) => [to, 3 + below(40)])),
      ]),
    ),
  );
  const stage = (): string[] => [
    ...new Set(
      Array.from({ length: 1 + below(recipe.alternatives) }, () => present(positions[below(positions.length)])),
    ),
  ];
  const items = Array.from({ length: recipe.items }, (_, i) => ({
    id: `i${i}`,
    stages: Array.from({ length: random() < recipe.staged ? 2 + below(2) : 1 }, stage),
    after: Array.from({ length: i }, (_none, j) => `i${j}`).filter(() => random() < recipe.orders / Math.max(1, i)),
  }));
  return { items, positions, changes };
}

/** Chains of positions to be called at in order, as lists of positions and as items. */
export function randomChains(seed: number, count: number, length: number): { chains: string[][]; items: PlanItem[] } {
  const random = seeded(seed);
  const chains = Array.from({ length: count }, () => Array.from({ length }, () => `p${Math.floor(random() * 4)}`));
  const items = chains.flatMap((chain, c) =>
    chain.map((position, i) => ({ id: `c${c}i${i}`, stages: [[position]], after: i === 0 ? [] : [`c${c}i${i - 1}`] })),
  );
  return { chains, items };
}
