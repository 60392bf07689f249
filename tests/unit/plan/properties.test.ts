import fc from 'fast-check';
import { describe, it, expect } from 'vitest';
import type { Library } from '../../../schemas/library.ts';
import { plan as planSchema, type Plan, type PlanRequest } from '../../../schemas/plan.ts';
import { blocksOf } from '../../../src/plan/blocks.ts';
import { headToToe } from '../../../src/plan/head-to-toe.ts';
import { planRequest } from '../../../src/plan/plan.ts';
import { present } from '../../fixtures/present.ts';
import { changeIn, libraryOf, withDetours, type Changes, type Sketch } from './small-library.ts';

const positions = ['chair', 'sitting', 'supine', 'standing'];
const regions = ['neck', 'chest-front', 'abdomen', 'legs'];
const tools = ['light', 'ruler', 'stethoscope'];

const some = (ids: readonly string[], least: number): fc.Arbitrary<string[]> =>
  fc.subarray([...ids], { minLength: least });

const changes: fc.Arbitrary<Changes> = fc
  .array(fc.integer({ min: 2, max: 40 }), { minLength: 12, maxLength: 12 })
  .map((seconds) => {
    const rows = positions.map((from, a) => {
      const others = positions.filter((to) => to !== from);
      return [from, Object.fromEntries(others.map((to, b) => [to, present(seconds[a * 3 + b])]))] as const;
    });
    return withDetours(Object.fromEntries(rows));
  });

const sketch = fc.record({
  stages: fc.array(some(positions, 1), { minLength: 1, maxLength: 2 }),
  exposure: some(regions, 0),
  examiner: fc.constantFrom('front', 'behind', 'anywhere'),
  instruments: some(tools, 0),
  seconds: fc.integer({ min: 2, max: 240 }),
  scope: fc.constantFrom('screening', 'complete', 'extended', 'preparation'),
  sides: fc.constantFrom('none', 'both', 'left', 'right'),
  after: fc.array(fc.nat(), { maxLength: 3 }),
});

/** Manoeuvres m0, m1 …; an order names an earlier one, so that there is no circle. */
const sketches: fc.Arbitrary<Sketch[]> = fc
  .array(sketch, { minLength: 1, maxLength: 14 })
  .map((list) =>
    list.map((one, i) => ({ ...one, id: `m${i}`, after: i === 0 ? [] : one.after.map((n) => `m${n % i}`) })),
  );

const limits: fc.Arbitrary<Partial<PlanRequest>> = fc.record(
  {
    minutes: fc.double({ min: 0.5, max: 30, noNaN: true }),
    start: fc.constantFrom(...positions),
    cannot: some(positions, 0),
    without: some(tools, 0),
    last: fc.constantFrom(['m0'], ['m1', 'm2']),
    avoidSides: fc.subarray(['left', 'right'] as ('left' | 'right')[]),
    pace: fc.double({ min: 0.5, max: 3, noNaN: true }),
  },
  { requiredKeys: [] },
);

interface Case {
  library: Library;
  changes: Changes;
  request: PlanRequest;
  plan: Plan;
}

function caseOf(list: Sketch[], table: Changes, more: Partial<PlanRequest>): Case {
  const library = libraryOf(list, table);
  const request = { ...more, manoeuvres: list.map(({ id }) => id) };
  return { library, changes: table, request, plan: planRequest(library, request) };
}

const manoeuvresIn = ({ library }: Case): Library['protocols'][number]['manoeuvres'] =>
  present(library.protocols[0]).manoeuvres;

/** Holds a property against 150 drawn cases, the same each time. */
function check(property: (one: Case) => void): void {
  const holds = (list: Sketch[], table: Changes, more: Partial<PlanRequest>): void =>
    property(caseOf(list, table, more));
  fc.assert(fc.property(sketches, changes, limits, holds), { numRuns: 150, seed: 20_261 });
}

describe('every run sheet', () => {
  it('keeps every order between what is on it, all stages of the earlier first', () =>
    check((one) => {
      const { steps } = one.plan;
      for (const { id, after } of manoeuvresIn(one)) {
        const first = steps.findIndex((step) => step.manoeuvre === id);
        for (const before of first < 0 ? [] : after)
          expect(steps.findLastIndex((step) => step.manoeuvre === before)).toBeLessThan(first);
      }
    }));

  it('keeps the stages of a manoeuvre together, in order, each in a position that it allows and the patient can take', () =>
    check((one) => {
      const { steps } = one.plan;
      const { cannot = [] } = one.request;
      for (const { id, stages, seconds } of manoeuvresIn(one)) {
        const own = steps.filter((step) => step.manoeuvre === id);
        if (own.length === 0) continue;
        const first = steps.indexOf(present(own[0]));
        expect(own).toEqual(steps.slice(first, first + stages.length));
        expect(own.map(({ stage }) => stage)).toEqual(stages.map((_, k) => k + 1));
        own.forEach(({ position }, k) => expect(stages[k]?.filter((p) => !cannot.includes(p))).toContain(position));
        expect(own.reduce((sum, step) => sum + step.seconds, 0)).toBe(seconds);
        expect(own.every((step) => Number.isInteger(step.seconds))).toBe(true);
      }
    }));

  it('loses nothing: each manoeuvre is on it or left out with a reason, never both', () =>
    check((one) => {
      const done = new Set(one.plan.steps.map(({ manoeuvre }) => manoeuvre));
      const left = one.plan.leftOut.map(({ manoeuvre }) => manoeuvre);
      expect([...done, ...left].toSorted()).toEqual(present(one.request.manoeuvres).toSorted());
    }));

  it('is a valid answer', () =>
    check(({ plan }) => {
      expect(planSchema.parse(plan)).toEqual(plan);
    }));

  it('adds up: the seconds of steps and changes, from the start given', () =>
    check(({ plan, changes: table, request }) => {
      const change = changeIn(table);
      const pace = request.pace ?? 1;
      let clock = 0;
      let at = request.start;
      let moved = 0;
      for (const step of plan.steps) {
        const seconds = at === undefined ? 0 : change(at, step.position) * pace;
        moved += seconds;
        expect(step.start).toBeCloseTo(clock + seconds, 1);
        clock += seconds + step.seconds;
        at = step.position;
      }
      expect(plan.totals.positionSeconds).toBeCloseTo(moved, 1);
      expect(plan.totals.seconds).toBeCloseTo(clock, 1);
    }));

  it('is proven, and moves the patient no longer than plain head-to-toe order', () =>
    check(({ library, request, plan }) => {
      expect(plan.optimal.positionSeconds).toBe(true);
      expect(plan.bound.positionSeconds).toBe(plan.totals.positionSeconds);
      expect(plan.totals.positionSeconds).toBeLessThanOrEqual(headToToe(library, request, plan).positionSeconds);
    }));

  it('fits in the minutes given once the preparation does', () =>
    check((one) => {
      const { minutes } = one.request;
      const whole = one.plan.steps.map(({ manoeuvre }) => manoeuvresIn(one).find(({ id }) => id === manoeuvre)?.scope);
      if (minutes === undefined || whole.every((scope) => scope === 'preparation')) return;
      expect(one.plan.totals.seconds).toBeLessThanOrEqual(minutes * 60);
    }));

  it('is the same, byte for byte, when it is made again', () =>
    check(({ library, request, plan }) => {
      expect(JSON.stringify(planRequest(library, request))).toBe(JSON.stringify(plan));
    }));

  it('is cut into blocks that hold every step once and lose no second', () =>
    check(({ plan }) => {
      const blocks = blocksOf(plan);
      expect(blocks.flatMap(({ steps }) => steps.map(({ step }) => step))).toEqual(plan.steps);
      const seconds = blocks.reduce((sum, block) => sum + block.seconds + block.changeSeconds, 0);
      expect(seconds).toBeCloseTo(plan.totals.seconds, 1);
      expect(blocks.every((block, i) => block.position !== blocks[i - 1]?.position)).toBe(true);
    }));
});

describe('less freedom never makes a sheet shorter', () => {
  it('when a position is forbidden and nothing is left out for it', () =>
    fc.assert(
      fc.property(sketches, changes, fc.constantFrom(...positions), (list, table, position) => {
        const library = libraryOf(list, table);
        const request = { manoeuvres: list.map(({ id }) => id) };
        const forbidden = planRequest(library, { ...request, cannot: [position] });
        fc.pre(forbidden.leftOut.length === 0);
        expect(forbidden.totals.positionSeconds).toBeGreaterThanOrEqual(
          planRequest(library, request).totals.positionSeconds,
        );
      }),
      { numRuns: 150, seed: 20_262 },
    ));

  it('when a manoeuvre is added', () =>
    fc.assert(
      fc.property(sketches, changes, fc.nat(), (list, table, n) => {
        const library = libraryOf(list, table);
        const all = list.map(({ id }) => id);
        fc.pre(all.length > 1);
        const fewer = all.filter((_, i) => i !== n % all.length);
        const least = planRequest(library, { manoeuvres: fewer }).totals.positionSeconds;
        expect(planRequest(library, { manoeuvres: all }).totals.positionSeconds).toBeGreaterThanOrEqual(least);
      }),
      { numRuns: 150, seed: 20_263 },
    ));

  it('when something is to be left for last, which moves the patient no more and no less', () =>
    fc.assert(
      fc.property(sketches, changes, (list, table) => {
        const library = libraryOf(list, table);
        const request = { manoeuvres: list.map(({ id }) => id) };
        const later = planRequest(library, { ...request, last: ['m0'] });
        expect(later.totals.positionSeconds).toBe(planRequest(library, request).totals.positionSeconds);
      }),
      { numRuns: 100, seed: 20_264 },
    ));
});
