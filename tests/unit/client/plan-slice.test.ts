/** The planner answers the same from the slice that the page is given as from the whole Library. */
import { describe, expect, it } from 'vitest';
import type { PlanRequest } from '../../../schemas/plan.ts';
import { fullRequest, titleOf } from '../../../src/client/plan-request.ts';
import { libraryOf, planSlice, type PlanSlice } from '../../../src/client/plan-slice.ts';
import { otherOrders } from '../../../src/components/run-sheet.ts';
import { requireLibrary } from '../../../src/library/load.ts';
import { planRequest } from '../../../src/plan/plan.ts';
import { stockRequest } from '../../../src/plan/stock-request.ts';

const library = requireLibrary('content');
const sent = JSON.parse(JSON.stringify(planSlice(library, library.forms))) as PlanSlice;
const slim = libraryOf(sent);

const requests: PlanRequest[] = [
  ...library.forms.map(stockRequest),
  { systems: ['neck', 'abdomen'], cannot: ['supine'], pace: 2 },
  { form: 'adult-screening', minutes: 30, without: ['stethoscope'], avoidSides: ['left'] },
  { manoeuvres: ['blood-pressure', 'liver-edge'], last: ['blood-pressure'], start: 'standing' },
];

describe('the slice of the Library for the page of run sheets', () => {
  it.each(requests)('gives the plan that the whole gives: %j', (request) => {
    const plan = planRequest(slim, request);
    expect(plan).toEqual(planRequest(library, request));
    expect(plan.steps.length).toBeGreaterThan(0);
  });

  it('gives the orders that a sheet is compared with', () => {
    const request = { systems: ['neck', 'abdomen', 'heart'] };
    const plan = planRequest(library, request);
    expect(otherOrders(slim, request, plan)).toEqual(otherOrders(library, request, plan));
  });

  it('is a small part of it, without what sheets do not say', () => {
    const text = JSON.stringify(sent);
    expect(text.length).toBeLessThan(200_000);
    expect(text).not.toMatch(/"(technique|cautions|records)"/);
  });
});

describe('what the planner is asked for a choice', () => {
  it('adds the beginning of a stock examination unless the patient is somewhere else', () => {
    expect(fullRequest(library, { form: 'adult-screening' })).toEqual({ form: 'adult-screening', start: 'sitting' });
    expect(fullRequest(library, { form: 'adult-screening', start: 'supine' }).start).toBe('supine');
  });

  it.each<PlanRequest>([{ systems: ['neck'] }, { manoeuvres: ['liver-edge'] }])(
    'adds preparation and closing to %j',
    (chosen) => {
      const { steps } = planRequest(library, fullRequest(library, chosen));
      expect(steps[0]?.manoeuvre).toBe('unwell-first');
      expect(steps.at(-1)?.manoeuvre).toBe('finish-and-explain');
      const wanted =
        chosen.manoeuvres ?? library.protocols.find(({ id }) => id === 'neck')?.manoeuvres.map(({ id }) => id);
      expect(steps.map(({ manoeuvre }) => manoeuvre)).toEqual(expect.arrayContaining(wanted ?? ['none']));
    },
  );

  it('is named after it', () => {
    expect(titleOf(library, { form: 'adult-screening' })).toBe('Adult screening examination');
    expect(titleOf(library, { systems: ['neck'] })).toBe('Neck');
    expect(titleOf(library, { manoeuvres: ['liver-edge', 'spleen'] })).toBe('2 manoeuvres');
  });
});
