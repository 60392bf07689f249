import { describe, expect, it } from 'vitest';
import { arrange } from '../../../src/plan/arrange/arrange.ts';
import type { Placed } from '../../../src/plan/arrange/runs.ts';
import type { Traits } from '../../../src/plan/arrange/tasks.ts';
import { fits, visitsOf, windowsOf, type Visit } from '../../../src/plan/arrange/visits.ts';
import type { Move } from '../../../src/plan/search/moves.ts';
import { problemOf, type PlanItem, type Problem } from '../../../src/plan/search/problem.ts';
import { has } from '../../../src/plan/search/sets.ts';
import { solve } from '../../../src/plan/search/solve.ts';
import { present } from '../../fixtures/present.ts';
import { randomCase, seeded, type Recipe } from './random-cases.ts';
import { changeIn } from './small-library.ts';

const never = (): boolean => false;

/** Draws what is uncovered, and where the examiner stands, for each item. */
function randomTraits(seed: number, count: number): Traits[] {
  const random = seeded(seed);
  const one = <T>(list: readonly T[]): T => present(list[Math.floor(random() * list.length)]);
  return Array.from({ length: count }, () => ({
    exposure: one(['', 'neck', 'chest', 'abdomen']),
    place: one([undefined, 'front', 'right'].map((place) => ({ place }))).place,
    tools: one(['', 'stethoscope', 'light']),
  }));
}

/** Changes of exposure, and moves of the examiner with as few of those, as one number. */
const inOne = (exposures: number, moves: number): number => exposures * 1000 + moves;

/** 1 where something asked for is not what there was; what was not yet, or is not asked for, changes nothing. */
const changed = (before: string | undefined, asked: string | undefined): number =>
  before === undefined || asked === undefined || before === asked ? 0 : 1;

/** The least changes along the visits, by trying everything (what was tried is remembered). */
function leastChanges(problem: Problem, visits: readonly Visit[], traits: readonly Traits[]): number {
  const known = new Map<string, number>();
  const bridges = new Map(visits.flatMap(({ bridge }) => (bridge === undefined ? [] : [[bridge.item, bridge.stages]])));
  const isPossible = (i: number, visit: number, done: number): boolean => {
    const ready = problem.order.every((j) => !has(problem.before, i * problem.words, j) || ((done >> j) & 1) === 1);
    const stages = bridges.get(i);
    const here = stages === undefined ? fits(problem, i, present(visits[visit])) : stages[0] === visit;
    return ((done >> i) & 1) === 0 && ready && here;
  };
  const least = (visit: number, bare: string | undefined, at: string | undefined, done: number): number => {
    if (done === 2 ** problem.count - 1) return 0;
    const key = `${visit} ${bare} ${at} ${done}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const goOn = visit + 1 < visits.length && visits[visit]?.bridge === undefined;
    let best = goOn ? least(visit + 1, bare, at, done) : Infinity;
    for (const i of problem.order.filter((one) => isPossible(one, visit, done))) {
      const { exposure, place } = present(traits[i]);
      const after = least(bridges.get(i)?.at(-1) ?? visit, exposure, place ?? at, done | (1 << i));
      best = Math.min(best, inOne(changed(bare, exposure), changed(at, place)) + after);
    }
    known.set(key, best);
    return best;
  };
  return least(0, undefined, undefined, 0);
}

/** Neighbours that differ in a list. */
const changesIn = (list: readonly unknown[]): number => list.filter((one, i) => i > 0 && one !== list[i - 1]).length;

/** What an order comes to, counted from the order itself. */
function counted(placed: readonly Placed[], traits: readonly Traits[]): { exposures: number; moves: number } {
  const own = placed.map(({ item }) => present(traits[item]));
  const places = own.map(({ place }) => place).filter((place) => place !== undefined);
  return { exposures: changesIn(own.map(({ exposure }) => exposure)), moves: changesIn(places) };
}

/** Small cases of every kind: many or few orders, stages, positions, alternatives. */
const recipes: Recipe[] = [
  { items: 8, positions: 3, orders: 0.8, alternatives: 2, staged: 0.2 },
  { items: 9, positions: 2, orders: 1.2, alternatives: 2, staged: 0.1 },
  { items: 9, positions: 4, orders: 0.5, alternatives: 3, staged: 0.3 },
  { items: 10, positions: 2, orders: 0.4, alternatives: 2, staged: 0 },
  { items: 9, positions: 5, orders: 1.6, alternatives: 2, staged: 0.3 },
];

describe('steps arranged along a path of positions', () => {
  it.each(recipes)(
    'uncover as seldom as any order along it, then move the examiner as seldom (150 cases, %o)',
    (recipe) => {
      for (let seed = 0; seed < 150; seed++) {
        const { items, positions, changes } = randomCase(seed, recipe);
        const problem = problemOf(items, positions, changeIn(changes), seed % 3 === 0 ? positions[0] : undefined);
        const { path } = solve(problem, never, never);
        const traits = randomTraits(seed, items.length);
        const { placed, exposures, moves, proven } = arrange(problem, path, traits);
        expect({ seed, ...counted(placed, traits) }).toEqual({ seed, exposures, moves });
        const least = leastChanges(problem, visitsOf(path), traits);
        expect({ seed, least: inOne(exposures, moves), proven }).toEqual({
          seed,
          least,
          proven: { exposures: true, moves: true },
        });
      }
    },
  );

  it('say when the proof was given up, and what they claim still holds', () => {
    const recipe = { items: 60, positions: 3, orders: 0.7, alternatives: 3, staged: 0.03 };
    const claims = Array.from({ length: 6 }, (_, seed) => {
      const { items, positions, changes } = randomCase(seed, recipe);
      const problem = problemOf(items, positions, changeIn(changes));
      const { path } = solve(problem, never, never);
      const traits = randomTraits(seed, items.length);
      const { placed, exposures, moves, proven } = arrange(problem, path, traits);
      expect(placed).toHaveLength(items.length);
      expect(counted(placed, traits)).toEqual({ exposures, moves });
      return proven;
    });
    expect(claims.some(({ moves }) => !moves)).toBe(true);
    expect(claims.every(({ exposures, moves }) => exposures || !moves)).toBe(true);
  });

  it('come in page order where nothing speaks against it', () => {
    expect(arrangedIds(['a', 'b', 'c', 'd'], {})).toEqual(['a', 'b', 'c', 'd']);
  });

  it('keep together what uncovers the same', () => {
    expect(arrangedIds(['a', 'b', 'c', 'd'], { a: { exposure: 'neck' }, c: { exposure: 'neck' } })).toEqual([
      'a',
      'c',
      'b',
      'd',
    ]);
  });

  it('then keep the examiner in one place, and anywhere is no place', () => {
    const front = { place: 'front' };
    const behind = { place: 'behind' };
    expect(arrangedIds(['a', 'b', 'c', 'd'], { a: front, b: behind, c: front })).toEqual(['a', 'c', 'd', 'b']);
  });

  it('then keep the instrument in hand', () => {
    const light = { tools: 'light' };
    expect(arrangedIds(['a', 'b', 'c'], { a: light, b: { tools: 'stethoscope' }, c: light })).toEqual(['a', 'c', 'b']);
  });
});

/** Ids in the order in which one-stage items of a single position are put. */
function arrangedIds(ids: readonly string[], traits: Record<string, Partial<Traits>>): string[] {
  const items: PlanItem[] = ids.map((id) => ({ id, stages: [['supine']], after: [] }));
  const problem = problemOf(items, ['supine'], () => 0);
  const all = ids.map((id) => ({ exposure: '', place: undefined, tools: '', ...traits[id] }));
  return arrange(problem, [{ to: 0, via: [] }], all).placed.map(({ item }) => present(ids[item]));
}

describe('the visits of a path', () => {
  const problem = (items: readonly PlanItem[]): Problem =>
    problemOf(items, ['lying', 'standing', 'side'], (a, b) => (a === b ? 0 : 10));
  const staged: PlanItem = { id: 'blood-pressure', stages: [['lying'], ['side'], ['standing']], after: [] };
  const path: Move[] = [
    { to: 0, via: [] },
    { to: 1, item: 0, via: [0, 2, 1] },
  ];

  it('join the stages of one manoeuvre and keep everything else out of the middle', () => {
    expect(visitsOf(path)).toEqual([
      { position: 0, closed: false, bridge: { item: 0, stages: [0, 1, 2] } },
      { position: 2, closed: true },
      { position: 1, closed: false },
    ]);
  });

  it('give each item the first and last visit that its orders allow', () => {
    const items: PlanItem[] = [
      staged,
      { id: 'before', stages: [['lying', 'standing']], after: [] },
      { id: 'after', stages: [['lying', 'standing']], after: ['blood-pressure'] },
      { id: 'free', stages: [['lying', 'standing', 'side']], after: [] },
    ];
    const [bridge, before, after, free] = windowsOf(
      problem(items.map((item) => (item === staged ? { ...staged, after: ['before'] } : item))),
      visitsOf(path),
    );
    expect([bridge, before, after, free]).toEqual([
      { first: 2, last: 0 },
      { first: 0, last: 0 },
      { first: 2, last: 2 },
      { first: 0, last: 2 },
    ]);
  });

  it('refuse a path on which an item has no place', () => {
    const [item] = [{ id: 'kneel', stages: [['standing']], after: [] }];
    expect(() => windowsOf(problem([present(item), { ...staged, id: 'x' }]), visitsOf([{ to: 0, via: [] }]))).toThrow(
      'fits into no visit',
    );
  });
});
