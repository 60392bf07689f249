import { describe, expect, it } from 'vitest';
import type { Priority } from '../../../schemas/priority.ts';
import type { Plan, PlanRequest } from '../../../schemas/plan.ts';
import { headToToe } from '../../../src/plan/head-to-toe.ts';
import { manoeuvresOf } from '../../../src/plan/manoeuvres-of.ts';
import { planRequest } from '../../../src/plan/plan.ts';
import { libraryOf, type Sketch } from './small-library.ts';

/** The plan of these manoeuvres, all of them asked for unless the request says otherwise. */
function planOf(sketches: readonly Sketch[], request: Partial<PlanRequest> = {}): Plan {
  return planRequest(libraryOf(sketches), { manoeuvres: sketches.map(({ id }) => id), ...request });
}

const ids = ({ steps }: Plan): string[] => steps.map(({ manoeuvre }) => manoeuvre);
const route = ({ steps }: Plan): string[] => steps.map(({ manoeuvre, position }) => `${manoeuvre} ${position}`);

const sitting = { stages: [['sitting']] };
const supine = { stages: [['supine']] };
const standing = { stages: [['standing']] };
const anywhere = { stages: [['sitting', 'supine', 'standing']] };

describe('a run sheet', () => {
  it('goes through each position once where it can: seated, lying, standing', () => {
    const plan = planOf([
      { id: 'gait', ...standing },
      { id: 'belly', ...supine },
      { id: 'eyes', ...sitting },
      { id: 'ankles', ...supine },
      { id: 'ears', ...sitting },
    ]);
    expect(plan.totals.positionChanges).toBe(2);
    // Sitting between the two is dearer by a second, standing first by six: 6 + 20, 15 + 20, 15 + 6, 8 + 15.
    expect(plan.totals.positionSeconds).toBe(21);
    expect(route(plan)).toEqual(['belly supine', 'ankles supine', 'eyes sitting', 'ears sitting', 'gait standing']);
  });

  it('of two orders that take as long takes the one from sitting over lying to standing', () => {
    const even = {
      sitting: { supine: 10, standing: 10 },
      supine: { sitting: 10, standing: 10 },
      standing: { sitting: 10, supine: 10 },
    };
    const sketches: Sketch[] = [
      { id: 'gait', ...standing },
      { id: 'belly', ...supine },
      { id: 'eyes', ...sitting },
    ];
    const plan = planRequest(libraryOf(sketches, even), { manoeuvres: ['gait', 'belly', 'eyes'] });
    expect(ids(plan)).toEqual(['eyes', 'belly', 'gait']);
  });

  it('comes back to a position only where an order asks for it', () => {
    const plan = planOf([
      { id: 'first', ...sitting },
      { id: 'second', ...supine, after: ['first'] },
      { id: 'third', ...sitting, after: ['second'] },
    ]);
    expect(route(plan)).toEqual(['first sitting', 'second supine', 'third sitting']);
    expect(plan.totals).toMatchObject({ positionChanges: 2, positionSeconds: 30 });
    expect(plan.optimal.positionSeconds).toBe(true);
    expect(plan.bound.positionSeconds).toBe(30);
  });

  it('counts the change from where the patient is', () => {
    const plan = planOf([{ id: 'gait', ...standing }], { start: 'supine' });
    expect(plan.totals).toMatchObject({ seconds: 50, positionChanges: 1, positionSeconds: 20 });
    expect(plan.steps[0]?.start).toBe(20);
  });

  it('keeps the stages of a manoeuvre together and shares its seconds out between them', () => {
    const plan = planOf([
      { id: 'belly', ...supine },
      { id: 'blood-pressure', stages: [['supine'], ['standing']], seconds: 481 },
      { id: 'gait', ...standing },
    ]);
    expect(route(plan)).toEqual(['belly supine', 'blood-pressure supine', 'blood-pressure standing', 'gait standing']);
    expect(plan.steps.map(({ stage, seconds, start }) => [stage, start, seconds])).toEqual([
      [1, 0, 30],
      [1, 30, 241],
      [2, 291, 240],
      [1, 531, 30],
    ]);
  });

  it('does what can be done anywhere without a change for it', () => {
    const plan = planOf([
      { id: 'hello', ...anywhere },
      { id: 'belly', ...supine, derivedAfter: ['hello'] },
      { id: 'goodbye', ...anywhere, derivedAfter: ['hello', 'belly'] },
    ]);
    expect(route(plan)).toEqual(['hello supine', 'belly supine', 'goodbye supine']);
    expect(plan.totals.positionSeconds).toBe(0);
  });

  it('holds for orders written and orders derived alike, and forgets those to what is not on the sheet', () => {
    const sketches: Sketch[] = [
      { id: 'feel', ...sitting, after: ['look', 'nowhere'] },
      { id: 'listen', ...sitting, derivedAfter: ['feel'] },
      { id: 'look', ...sitting },
    ];
    expect(ids(planOf(sketches))).toEqual(['look', 'feel', 'listen']);
    expect(ids(planOf(sketches, { manoeuvres: ['listen', 'look'] }))).toEqual(['listen', 'look']);
  });

  it('multiplies position changes, and nothing else, by the pace', () => {
    const plan = planOf(
      [
        { id: 'eyes', ...sitting },
        { id: 'belly', ...supine, after: ['eyes'] },
      ],
      { pace: 1.5 },
    );
    expect(plan.totals).toMatchObject({ positionSeconds: 22.5, seconds: 82.5 });
    expect(plan.bound.positionSeconds).toBe(22.5);
    expect(plan.steps[1]?.start).toBe(52.5);
  });

  it('lists what to lay out once, in the order of the vocabulary', () => {
    const plan = planOf([
      { id: 'a', instruments: ['light', 'ruler'] },
      { id: 'b', instruments: ['ruler'] },
    ]);
    expect(plan.layOut).toEqual(['light', 'ruler']);
  });

  it('counts changes of what is bare and moves of the examiner; anywhere and nothing uncovered are none', () => {
    const plan = planOf([
      { id: 'a', exposure: ['none'], examiner: 'front' },
      { id: 'b', exposure: [], examiner: 'anywhere', after: ['a'] },
      { id: 'c', exposure: ['neck', 'arms'], examiner: 'front', after: ['b'] },
      { id: 'd', exposure: ['arms', 'neck'], examiner: 'behind', after: ['c'] },
    ]);
    expect(plan.totals).toMatchObject({ exposureChanges: 1, examinerMoves: 1 });
  });

  it('of nothing is empty', () => {
    const plan = planOf([{ id: 'gait', ...standing }], { cannot: ['standing'] });
    expect(plan.steps).toEqual([]);
    expect(plan.totals).toEqual({
      seconds: 0,
      positionChanges: 0,
      positionSeconds: 0,
      exposureChanges: 0,
      examinerMoves: 0,
    });
  });

  it('says so when time ran out before the proof, and still does everything', () => {
    const sketches: Sketch[] = Array.from({ length: 20 }, (_, i) => ({
      id: `m${i}`,
      stages: [[['sitting', 'supine', 'standing'][i % 3] ?? 'sitting']],
      after: i < 3 ? [] : [`m${i - 2}`, `m${i - 3}`],
    }));
    const library = libraryOf(sketches);
    const request = { manoeuvres: sketches.map(({ id }) => id) };
    const hurried = planRequest(library, request, { milliseconds: 0 });
    const proven = planRequest(library, request);
    expect(proven.optimal.positionSeconds).toBe(true);
    expect(hurried.optimal.positionSeconds).toBe(hurried.bound.positionSeconds === hurried.totals.positionSeconds);
    expect(hurried.bound.positionSeconds).toBeLessThanOrEqual(proven.totals.positionSeconds);
    expect(hurried.totals.positionSeconds).toBeGreaterThanOrEqual(proven.totals.positionSeconds);
    expect(ids(hurried).toSorted()).toEqual(ids(proven).toSorted());
  });
});

describe('what a request leaves out', () => {
  it('is what needs a position that cannot be taken, stage by stage, with the reason', () => {
    const plan = planOf(
      [
        { id: 'gait', ...standing },
        { id: 'belly', ...supine },
        { id: 'arms', stages: [['sitting', 'standing']] },
        { id: 'blood-pressure', stages: [['supine'], ['standing']] },
        { id: 'balance', stages: [['standing', 'sitting'], ['standing']] },
      ],
      { cannot: ['standing'] },
    );
    const reason = 'needs a position that this patient cannot take: standing';
    expect(plan.leftOut).toEqual([
      { manoeuvre: 'gait', reason },
      { manoeuvre: 'blood-pressure', reason },
      { manoeuvre: 'balance', reason },
    ]);
    expect(route(plan)).toContain('arms sitting');
  });

  it('names all the positions that would have served', () => {
    const plan = planOf([{ id: 'arms', stages: [['sitting', 'standing']] }], { cannot: ['standing', 'sitting'] });
    expect(plan.leftOut[0]?.reason).toBe(
      'needs one of these positions, and this patient can take none of them: sitting; standing',
    );
  });

  it('is what needs an instrument that is missing', () => {
    const plan = planOf([{ id: 'listen', instruments: ['stethoscope', 'light'] }, { id: 'look' }], {
      without: ['stethoscope'],
    });
    expect(plan.leftOut).toEqual([{ manoeuvre: 'listen', reason: 'needs what is missing: stethoscope' }]);
    expect(ids(plan)).toEqual(['look']);
  });

  it('is what is done on a side to avoid, not what is done on both', () => {
    const sketches: Sketch[] = [
      { id: 'spleen', sides: 'left' },
      { id: 'liver', sides: 'right' },
      { id: 'kidneys', sides: 'both' },
      { id: 'trachea', sides: 'none' },
    ];
    expect(planOf(sketches, { avoidSides: ['left'] }).leftOut).toEqual([
      { manoeuvre: 'spleen', reason: 'is done on the left, a side to avoid' },
    ]);
    expect(ids(planOf(sketches, { avoidSides: ['left', 'right'] }))).toEqual(['trachea']);
  });

  it('takes its orders with it', () => {
    const plan = planOf(
      [
        { id: 'after', ...sitting, after: ['gait'] },
        { id: 'gait', ...standing },
      ],
      { cannot: ['standing'] },
    );
    expect(ids(plan)).toEqual(['after']);
  });
});

describe('too few minutes', () => {
  const sketches: Sketch[] = [
    { id: 'hello', scope: 'preparation', seconds: 60, ...anywhere },
    { id: 'far', scope: 'extended', seconds: 20, ...sitting },
    { id: 'whole', scope: 'complete', seconds: 60, ...sitting },
    { id: 'eyes', scope: 'screening', seconds: 60, ...sitting },
    { id: 'belly', scope: 'screening', seconds: 200, ...supine },
    { id: 'pulse', scope: 'intake', seconds: 30, ...sitting },
  ];
  const leftOut = (minutes: number): string[] =>
    planOf(sketches, { minutes }).leftOut.map(({ manoeuvre }) => manoeuvre);

  it('drop extended before complete before screening, the later on the page first', () => {
    expect(leftOut(60)).toEqual([]);
    expect(leftOut((60 + 60 + 200 + 30 + 60 + 15) / 60)).toEqual(['far']);
    expect(leftOut((60 + 60 + 200 + 30 + 15) / 60)).toEqual(['far', 'whole']);
  });

  it('keep what still fits beside what matters more', () => {
    expect(leftOut((60 + 60 + 30 + 20) / 60)).toEqual(['whole', 'belly']);
  });

  it('never drop the preparation', () => {
    expect(ids(planOf(sketches, { minutes: 0.1 }))).toEqual(['hello']);
  });

  it('give the reason, and the sheet fits', () => {
    const plan = planOf(sketches, { minutes: 3 });
    // Kept: hello, eyes, pulse and far (60 + 60 + 30 + 20). The belly (200 s) was tried beside hello and eyes, whose time
    // alone rules it out before any change of position is counted; the whole (60 s) beside the pulse too.
    expect(plan.leftOut).toEqual([
      {
        manoeuvre: 'whole',
        reason: 'does not fit in 3 minutes; beside what matters more it needs at least 3 min 30 s',
      },
      {
        manoeuvre: 'belly',
        reason: 'does not fit in 3 minutes; beside what matters more it needs at least 5 min 20 s',
      },
    ]);
    expect(plan.totals.seconds).toBeLessThanOrEqual(180);
    expect(planOf(sketches, { minutes: 1 }).leftOut[0]?.reason).toMatch(/^does not fit in 1 minute; beside what /);
  });

  it('count position changes at the pace of the patient', () => {
    const two: Sketch[] = [
      { id: 'eyes', ...sitting, seconds: 30 },
      { id: 'belly', ...supine, seconds: 30 },
    ];
    expect(planOf(two, { minutes: 1.25 }).leftOut).toEqual([]);
    expect(planOf(two, { minutes: 1.25, pace: 1.1 }).leftOut).toHaveLength(1);
  });
});

describe('priorities of the content', () => {
  const sketches: Sketch[] = [
    { id: 'hello', scope: 'preparation', seconds: 20, ...anywhere },
    { id: 'nodes', scope: 'screening', seconds: 30, ...sitting },
    { id: 'back', scope: 'screening', seconds: 50, ...sitting },
    { id: 'front', scope: 'screening', seconds: 50, ...sitting },
    { id: 'signs', scope: 'extended', seconds: 40, ...sitting },
    { id: 'goodbye', scope: 'preparation', seconds: 20, ...anywhere, after: ['back', 'front'] },
  ];
  const rung = (id: string, keep: Priority['keep'], manoeuvres: string[]): Priority => ({
    ...{ id, title: `Rung of ${id}`, why: 'Because.', keep },
    ...{ manoeuvres, scopes: [] },
  });
  const priorities = [
    rung('opening', 'always', ['hello', 'goodbye']),
    rung('emergency', 'each', ['signs', 'elsewhere']),
    rung('lungs', 'together', ['back', 'front']),
    { ...rung('rest', 'each', []), scopes: ['screening' as const] },
  ];
  const sheet = (seconds: number): Plan =>
    planRequest(
      { ...libraryOf(sketches), priorities },
      { manoeuvres: sketches.map(({ id }) => id), minutes: seconds / 60 },
    );

  it('decide what is kept, whatever the scope', () => {
    expect(ids(sheet(80)).toSorted()).toEqual(['goodbye', 'hello', 'signs']);
    expect(ids(sheet(180)).toSorted()).toEqual(['back', 'front', 'goodbye', 'hello', 'signs']);
    expect(sheet(180).optimal.kept).toBe(true);
  });

  it('never split a group: what fits beside it is kept instead, and the reason names it', () => {
    const plan = sheet(179);
    expect(ids(plan).toSorted()).toEqual(['goodbye', 'hello', 'nodes', 'signs']);
    const reason =
      'does not fit in 2.9833333333333334 minutes, where "Rung of lungs" is kept or left out as a whole; ' +
      'beside what matters more it needs at least 3 min';
    expect(plan.leftOut).toEqual([
      { manoeuvre: 'back', reason },
      { manoeuvre: 'front', reason },
    ]);
  });

  it('keep the opening and the closing even when they do not fit', () => {
    const plan = sheet(10);
    expect(ids(plan)).toEqual(['hello', 'goodbye']);
    expect(plan.totals.seconds).toBe(40);
  });

  it('treat what is left of a group when the rest of it is not asked for or cannot be done', () => {
    const library = { ...libraryOf(sketches), priorities };
    const plan = planRequest(library, { manoeuvres: ['front', 'nodes'], minutes: 50 / 60 });
    expect(ids(plan)).toEqual(['front']);
    expect(plan.leftOut[0]?.reason).toMatch(/^does not fit in \S+ minutes; beside/);
  });

  it('say nothing of what was kept when there is time enough', () => {
    expect(planOf(sketches).optimal.kept).toBeUndefined();
  });
});

describe('a side to avoid', () => {
  const sketches: Sketch[] = [
    { id: 'pulse', sides: 'both', seconds: 50 },
    { id: 'liver', sides: 'right' },
    { id: 'mouth', sides: 'none' },
  ];

  it('leaves the other side of what is done on both, with all its seconds, and the step says which', () => {
    const { steps } = planOf(sketches, { avoidSides: ['left'] });
    expect(steps.map(({ manoeuvre, seconds, side }) => [manoeuvre, seconds, side])).toEqual([
      ['pulse', 50, 'right'],
      ['liver', 30, undefined],
      ['mouth', 30, undefined],
    ]);
    expect(planOf(sketches, { avoidSides: ['right'] }).steps.map(({ side }) => side)).toEqual(['left', undefined]);
    expect(planOf(sketches).steps.every((step) => !('side' in step))).toBe(true);
  });
});

describe('what is to be left for last', () => {
  it('comes last where the orders allow it', () => {
    const sketches: Sketch[] = [
      { id: 'sore', ...sitting },
      { id: 'neck', ...sitting },
      { id: 'belly', ...supine },
      { id: 'goodbye', ...anywhere, derivedAfter: ['sore', 'neck', 'belly'] },
    ];
    expect(ids(planOf(sketches, { last: ['sore'] }))).toEqual(['belly', 'neck', 'sore', 'goodbye']);
  });

  it('never at the cost of moving the patient more: then after as much as can be had', () => {
    const sketches: Sketch[] = [
      { id: 'sore', ...sitting },
      { id: 'neck', ...sitting },
      { id: 'belly', ...supine, after: ['neck'] },
    ];
    const plan = planOf(sketches, { last: ['sore'] });
    expect(ids(plan)).toEqual(['neck', 'sore', 'belly']);
    expect(plan.totals.positionSeconds).toBe(15);
  });

  it('may be several, or not on the sheet at all', () => {
    const sketches: Sketch[] = [{ id: 'a' }, { id: 'b' }, { id: 'c' }, { id: 'd', ...standing }];
    const plan = planOf(sketches, { manoeuvres: ['a', 'b', 'c'], last: ['a', 'b', 'd'] });
    expect(ids(plan)).toEqual(['c', 'a', 'b']);
  });
});

describe('what is examined', () => {
  const library = {
    ...libraryOf([
      { id: 'hello', scope: 'preparation' },
      { id: 'eyes', scope: 'screening' },
      { id: 'smell', scope: 'extended' },
      { id: 'ears', scope: 'screening' },
    ]),
  };

  it('is, for a form, every manoeuvre of its scopes and those it names, in page order', () => {
    expect(manoeuvresOf(library, { scopes: ['screening'], manoeuvres: ['smell', 'eyes'] })).toEqual([
      'eyes',
      'smell',
      'ears',
    ]);
    expect(manoeuvresOf(library, { scopes: [], manoeuvres: ['ears', 'hello'] })).toEqual(['hello', 'ears']);
  });

  it('is, for systems, every manoeuvre of each', () => {
    expect(ids(planRequest(library, { systems: ['page'] })).toSorted()).toEqual(['ears', 'eyes', 'hello', 'smell']);
  });
});

describe('plain head-to-toe order', () => {
  const sketches: Sketch[] = [
    { id: 'eyes', ...sitting },
    { id: 'belly', ...supine },
    { id: 'arms', stages: [['sitting', 'standing']], after: ['belly'] },
    { id: 'ankles', ...supine },
  ];
  const request = { manoeuvres: sketches.map(({ id }) => id) };

  it('moves the patient to the nearest position that serves the next, page by page', () => {
    const library = libraryOf(sketches);
    const plan = planRequest(library, request);
    // Sitting, lying (15), sitting again for the arms (15 against 20 to stand), lying (15).
    expect(headToToe(library, request, plan)).toMatchObject({ positionSeconds: 45, positionChanges: 3 });
    expect(plan.totals).toMatchObject({ positionSeconds: 15, positionChanges: 1 });
  });

  it('counts only what is on the sheet', () => {
    const library = libraryOf(sketches);
    const without = { ...request, cannot: ['supine'] };
    const plan = planRequest(library, without);
    expect(headToToe(library, without, plan)).toMatchObject({ positionSeconds: 0, seconds: 60 });
  });
});
