import { describe, expect, it } from 'vitest';
import { leaveForLast } from '../../../src/plan/leave-for-last.ts';
import { problemOf, type PlanItem } from '../../../src/plan/search/problem.ts';
import { pathWithin, solve } from '../../../src/plan/search/solve.ts';
import { visitsOf, windowsOf } from '../../../src/plan/arrange/visits.ts';
import { present } from '../../fixtures/present.ts';
import { leastBySpreading } from './exhaustive.ts';
import { randomCase, type Recipe } from './random-cases.ts';
import { changeIn } from './small-library.ts';

const never = (): boolean => false;
const recipe: Recipe = { items: 8, positions: 3, orders: 0.8, alternatives: 2, staged: 0.2 };

/** An item's own orders, as written in a list of items. */
const afterOf = (items: readonly PlanItem[], id: string): readonly string[] =>
  present(items.find((item) => item.id === id)).after;

/** Everything that comes after an item, directly or not, and the item itself. */
function followersOf(items: readonly PlanItem[], id: string): Set<string> {
  const found = new Set([id]);
  for (let round = 0; round < items.length; round++)
    for (const item of items) if (item.after.some((before) => found.has(before))) found.add(item.id);
  return found;
}

describe('what is to be left for last', () => {
  it('moves the patient no more, and comes after all that it can come after for nothing (60 cases)', () => {
    for (let seed = 0; seed < 60; seed++) {
      const { items, changes } = randomCase(seed, recipe);
      const least = (some: readonly PlanItem[]): number => leastBySpreading(some, changeIn(changes));
      const id = `i${seed % items.length}`;
      const free = least(items);
      const later = leaveForLast(items, [id], (some) => least(some) === free);
      expect({ seed, seconds: least(later) }).toEqual({ seed, seconds: free });
      const followers = followersOf(items, id);
      const passed = items.filter((one) => !followers.has(one.id) && !afterOf(later, id).includes(one.id));
      for (const { id: other } of passed) {
        const more = later.map((item) => (item.id === id ? { ...item, after: [...item.after, other] } : item));
        expect({ seed, other, seconds: least(more) }).not.toEqual({ seed, other, seconds: free });
      }
    }
  });
});

describe('a path of at most so many seconds', () => {
  it('is found when there is one, and only then (80 cases)', () => {
    for (let seed = 0; seed < 80; seed++) {
      const { items, positions, changes } = randomCase(seed, recipe);
      const problem = problemOf(items, positions, changeIn(changes));
      const { seconds } = solve(problem, never, never);
      const path = present(pathWithin(problem, seconds, never));
      expect(windowsOf(problem, visitsOf(path))).toHaveLength(items.length);
      const route = visitsOf(path).map(({ position }) => present(problem.positions[position]));
      const moved = route.slice(1).reduce((sum, to, i) => sum + changeIn(changes)(present(route[i]), to), 0);
      expect({ seed, moved }).toEqual({ seed, moved: seconds });
      expect({ seed, path: pathWithin(problem, seconds - 1, never) }).toEqual({ seed, path: undefined });
    }
  });
});
