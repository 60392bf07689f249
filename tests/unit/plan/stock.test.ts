import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../schemas/plan.ts';
import { requireLibrary } from '../../../src/library/load.ts';
import { headToToe } from '../../../src/plan/head-to-toe.ts';
import { planRequest } from '../../../src/plan/plan.ts';
import { stockRequest } from '../../../src/plan/stock-request.ts';
import { present } from '../../fixtures/present.ts';

const library = requireLibrary('content');
const everything = library.protocols.flatMap(({ manoeuvres }) => manoeuvres.map(({ id }) => id));
const form = (id: string): (typeof library.forms)[number] => present(library.forms.find((one) => one.id === id));

/** Positions in the order in which the patient takes them. */
const routeOf = ({ steps }: Plan): string[] =>
  steps.map(({ position }) => position).filter((position, i, all) => position !== all[i - 1]);

describe('the sheet of each stock examination', () => {
  it.each(library.forms.map((one) => [one.id, one] as const))(
    'moves the patient as little as can be, from its start, and leaves nothing out: %s',
    (_, definition) => {
      const request = stockRequest(definition);
      const plan = planRequest(library, request);
      expect(plan.leftOut).toEqual([]);
      expect(plan.optimal.positionSeconds).toBe(true);
      expect(plan.bound.positionSeconds).toBe(plan.totals.positionSeconds);
      const plain = headToToe(library, request, plan);
      expect(plan.totals.positionSeconds).toBeLessThanOrEqual(plain.positionSeconds);
      expect(plan.totals.exposureChanges).toBeLessThanOrEqual(plain.exposureChanges);
      expect(plan.steps.length).toBeGreaterThan(10);
    },
  );

  it('uncovers as seldom as can be along its positions, proven for all but the longest', () => {
    const proven = library.forms.filter((one) => planRequest(library, stockRequest(one)).optimal.exposureChanges);
    expect(library.forms.length - proven.length).toBeLessThanOrEqual(1);
  });

  it('opens with "unwell? stop and treat first" and closes with finish-and-explain', () => {
    for (const definition of library.forms) {
      const { steps } = planRequest(library, stockRequest(definition));
      expect([steps[0]?.manoeuvre, steps.at(-1)?.manoeuvre]).toEqual(['unwell-first', 'finish-and-explain']);
    }
  });
});

describe('the adult screening examination', () => {
  it('begins seated, goes on lying, ends standing, and comes back to no position (common practice)', () => {
    const route = routeOf(planRequest(library, stockRequest(form('adult-screening'))));
    expect(route[0]).toBe('sitting');
    expect(route.slice(1, -1).every((position) => ['supine', 'semi-recumbent'].includes(position))).toBe(true);
    expect(route.at(-1)).toBe('standing');
    expect(new Set(route).size).toBe(route.length);
  });
});

describe('the examination of a patient who cannot leave the bed', () => {
  it('begins half lying and needs one roll to the side', () => {
    expect(routeOf(planRequest(library, stockRequest(form('bed-bound'))))).toEqual(['semi-recumbent', 'left-lateral']);
  });
});

describe('the whole library at once', () => {
  it('is planned in full, with the least seconds of changes', () => {
    const plan = planRequest(library, { manoeuvres: everything });
    expect(new Set(plan.steps.map(({ manoeuvre }) => manoeuvre)).size).toBe(everything.length);
    expect(plan.optimal.positionSeconds).toBe(true);
  });
});

describe('the priorities of the library', () => {
  const together = library.priorities.filter(({ keep }) => keep === 'together');

  it.each([5, 15, 20, 30, 45, 60])('split no group in %i minutes and keep the opening and the closing', (minutes) => {
    for (const definition of library.forms) {
      const request = stockRequest(definition);
      const asked = new Set(planRequest(library, request).steps.map(({ manoeuvre }) => manoeuvre));
      const plan = planRequest(library, { ...request, minutes });
      const kept = new Set(plan.steps.map(({ manoeuvre }) => manoeuvre));
      for (const { id, manoeuvres } of together) {
        const own = manoeuvres.filter((one) => asked.has(one)).map((one) => kept.has(one));
        expect({ id, kept: new Set(own).size }).toEqual({ id, kept: own.length === 0 ? 0 : 1 });
      }
      for (const id of present(library.priorities[0]).manoeuvres) expect(kept.has(id)).toBe(true);
      expect(kept.size + plan.leftOut.length).toBe(asked.size);
      expect(plan.optimal.kept).toBe(true);
    }
  });

  it('keep the look for danger and both lungs before the rest of the screening', () => {
    const kept = planRequest(library, { form: 'adult-screening', start: 'sitting', minutes: 20 }).steps.map(
      ({ manoeuvre }) => manoeuvre,
    );
    expect(kept).toEqual(
      expect.arrayContaining([
        'general-impression',
        'consciousness-level',
        'lung-auscultation-back',
        'lung-auscultation-front',
      ]),
    );
  });
});
