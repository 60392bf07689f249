import { describe, expect, it } from 'vitest';
import { requireLibrary } from '../../../src/library/load.ts';
import { planRequest } from '../../../src/plan/plan.ts';
import { stockRequest } from '../../../src/plan/stock-request.ts';
import { systemBySystem } from '../../../src/plan/system-by-system.ts';

const library = requireLibrary('content');

describe('the same sheet system by system', () => {
  it.each(library.forms.map(({ id }) => id))('never moves the patient less, and works as long: %s', (id) => {
    const form = library.forms.find((one) => one.id === id);
    const request = stockRequest(form ?? { id, start: undefined });
    const plan = planRequest(library, request);
    const totals = systemBySystem(library, request, plan);
    expect(totals.positionSeconds).toBeGreaterThanOrEqual(plan.bound.positionSeconds);
    expect(totals.seconds - totals.positionSeconds).toBe(plan.totals.seconds - plan.totals.positionSeconds);
  });

  it('is the sheet itself for one system', () => {
    const request = { systems: ['abdomen'], start: 'standing', pace: 2 };
    const plan = planRequest(library, request);
    expect(systemBySystem(library, request, plan).positionSeconds).toBe(plan.totals.positionSeconds);
  });

  it('moves between systems: two that want one position each, one after the other', () => {
    const request = { manoeuvres: ['jugular-venous-pressure', 'liver-edge', 'radial-pulse'], start: 'standing' };
    const plan = planRequest(library, request);
    expect(systemBySystem(library, request, plan).positionChanges).toBeGreaterThanOrEqual(plan.totals.positionChanges);
  });
});
