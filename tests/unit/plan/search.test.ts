import { describe, expect, it } from 'vitest';
import { problemOf, type PlanItem } from '../../../src/plan/search/problem.ts';
import { solve } from '../../../src/plan/search/solve.ts';
import { visitsOf, windowsOf } from '../../../src/plan/arrange/visits.ts';
import { leastBySpreading, leastOfAllOrders, leastOfChains } from './exhaustive.ts';
import { randomCase, randomChains, type Recipe } from './random-cases.ts';
import { changeIn } from './small-library.ts';

const never = (): boolean => false;
const always = (): boolean => true;

const small: Recipe[] = [
  { items: 4, positions: 3, orders: 1, alternatives: 2, staged: 0.3 },
  { items: 5, positions: 4, orders: 0.5, alternatives: 3, staged: 0.2 },
  { items: 6, positions: 4, orders: 1.5, alternatives: 2, staged: 0.35 },
];

const larger: Recipe[] = [
  { items: 9, positions: 5, orders: 1, alternatives: 2, staged: 0.3 },
  { items: 12, positions: 4, orders: 1.5, alternatives: 2, staged: 0.2 },
];

const described = (recipe: Recipe): string =>
  `${recipe.items} items, ${recipe.positions} positions, ${recipe.orders} orders an item`;

const range = (count: number): number[] => Array.from({ length: count }, (_, i) => i);

describe.each(small)('the least seconds of position changes of $items items in $positions positions', (recipe) => {
  it.each([0, 1, 2, 3])('are those of the best of all orders (50 cases, part %i)', (part) => {
    for (const seed of range(50)) {
      const { items, positions, changes } = randomCase(part * 1000 + seed, recipe);
      const change = changeIn(changes);
      const start = seed % 2 === 0 ? undefined : positions[seed % positions.length];
      const { seconds, bound } = solve(problemOf(items, positions, change, start), never, never);
      const least = leastOfAllOrders(items, change, start);
      expect({ seed, seconds, bound }).toEqual({ seed, seconds: least, bound: least });
    }
  });
});

describe('the least seconds of larger cases', () => {
  it.each(larger.map((recipe) => [described(recipe), recipe] as const))(
    'are those of a plain search: %s',
    (_, recipe) => {
      for (const seed of range(25)) {
        const { items, positions, changes } = randomCase(seed, recipe);
        const change = changeIn(changes);
        const { seconds, bound } = solve(problemOf(items, positions, change), never, never);
        const least = leastBySpreading(items, change);
        expect({ seed, seconds, bound }).toEqual({ seed, seconds: least, bound: least });
      }
    },
  );

  it.each([
    { count: 2, length: 24 },
    { count: 3, length: 14 },
    { count: 4, length: 9 },
  ])(
    'are those of a table over $count chains of $length items, more than one part and one word hold',
    ({ count, length }) => {
      for (const seed of range(8)) {
        const { chains, items } = randomChains(seed, count, length);
        const { positions, changes } = randomCase(seed, {
          items: 0,
          positions: 4,
          orders: 0,
          alternatives: 1,
          staged: 0,
        });
        const change = changeIn(changes);
        const { seconds, bound } = solve(problemOf(items, positions, change), never, never);
        const least = leastOfChains(chains, change);
        expect({ seed, seconds, bound }).toEqual({ seed, seconds: least, bound: least });
      }
    },
  );
});

describe('a search out of time', () => {
  it.each(range(12))('still gives an order that does everything, and a bound that holds (seed %i)', (seed) => {
    const { items, positions, changes } = randomCase(seed, {
      items: 11,
      positions: 5,
      orders: 1,
      alternatives: 2,
      staged: 0.2,
    });
    const change = changeIn(changes);
    const problem = problemOf(items, positions, change);
    const { path, seconds, bound } = solve(problem, always, always);
    const least = leastBySpreading(items, change);
    expect(bound).toBeLessThanOrEqual(least);
    expect(seconds).toBeGreaterThanOrEqual(least);
    expect(windowsOf(problem, visitsOf(path))).toHaveLength(items.length);
  });

  it('comes within a quarter of the least when it may go on without proof', () => {
    const ratios = range(20).map((seed) => {
      const { items, positions, changes } = randomCase(seed, {
        items: 12,
        positions: 5,
        orders: 1,
        alternatives: 2,
        staged: 0.2,
      });
      const change = changeIn(changes);
      return solve(problemOf(items, positions, change), always, never).seconds / leastBySpreading(items, change);
    });
    expect(Math.max(...ratios)).toBeLessThanOrEqual(1.25);
  });
});

describe('a problem', () => {
  it('refuses orders that form a circle', () => {
    const items: PlanItem[] = [
      { id: 'look', stages: [['p0']], after: ['feel'] },
      { id: 'feel', stages: [['p0']], after: ['look'] },
    ];
    expect(() => problemOf(items, ['p0'], () => 0)).toThrow('the orders of look, feel form a circle');
  });

  it('of no items is solved by doing nothing', () => {
    expect(
      solve(
        problemOf([], ['p0'], () => 0),
        never,
        never,
      ),
    ).toEqual({ path: [], seconds: 0, bound: 0 });
  });
});
