import { describe, expect, it } from 'vitest';
import type { PlanRequest } from '../../../schemas/plan.ts';
import {
  behindHash,
  isRequest,
  requestFromHash,
  requestToHash,
  withoutLimits,
  type KnownIds,
} from '../../../src/client/plan-address.ts';

const known: KnownIds = {
  form: new Set(['whole-wrist']),
  systems: new Set(['wrist', 'hand']),
  manoeuvres: new Set(['look', 'feel']),
  positions: new Set(['sitting', 'supine']),
  instruments: new Set(['ruler']),
};

const everything: PlanRequest = {
  form: 'whole-wrist',
  minutes: 12.5,
  start: 'sitting',
  cannot: ['supine'],
  without: ['ruler'],
  last: ['look', 'feel'],
  avoidSides: ['left'],
  pace: 1.5,
};

describe('a request in an address', () => {
  it.each<PlanRequest>([everything, { systems: ['wrist', 'hand'] }, { manoeuvres: ['feel'], minutes: 600 }])(
    'comes back as it went: %j',
    (request) => expect(requestFromHash(requestToHash(request), known)).toEqual(request),
  );

  it('is readable, and needs no escapes', () => {
    const hash = requestToHash(everything);
    expect(hash).toContain('form=whole-wrist&minutes=12.5&start=sitting');
    expect(encodeURI(hash)).toBe(hash);
  });

  it('holds nothing of the patient and the room unless that is asked for', () => {
    const { form, minutes } = everything;
    expect(withoutLimits(everything)).toEqual({ form, minutes });
  });

  it.each([
    ['', 'nothing'],
    ['start=sitting', 'nothing to examine'],
    ['form=whole-wrist&systems=wrist', 'two choices'],
    ['form=whole-ankle', 'an unknown examination'],
    ['systems=wrist.ankle', 'an unknown system'],
    ['form=whole-wrist&start=hanging', 'an unknown position'],
    ['form=whole-wrist&minutes=-3', 'minutes below 0'],
    ['form=whole-wrist&minutes=601', 'minutes without end'],
    ['form=whole-wrist&minutes=', 'no minutes'],
    ['form=whole-wrist&pace=1e9', 'a pace of another kind'],
    ['form=whole-wrist&avoidSides=both', 'no side'],
    ['form=whole-wrist&form=whole-wrist', 'a key twice'],
    ['form=whole-wrist&colour=red', 'an unknown key'],
    ['form=whole-wrist&toString=1', 'a key of every object'],
    ['form=whole-wrist=1', 'two signs'],
    ['form=whole-wri', 'a link cut short'],
  ])('is refused when it is damaged: "%s" (%s)', (hash) => {
    expect(requestFromHash(hash, known)).toBeUndefined();
  });

  it('is told from a place on the page', () => {
    expect([isRequest('#form=whole-wrist'), isRequest('#sheet-step-3'), isRequest('')]).toEqual([true, false, false]);
  });
});

it('what stands behind # is read with its escapes, and as it is where they are broken', () => {
  expect(['#form%3Dwhole-wrist', '#form=%E0%A4', ''].map(behindHash)).toEqual(['form=whole-wrist', 'form=%E0%A4', '']);
});
