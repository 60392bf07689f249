import type { Questionnaire } from '@medplum/fhirtypes';
import { describe, expect, it } from 'vitest';
import { allInvariants, invariants } from '../../../src/forms/invariants.ts';
import { itemsOf } from '../../../src/forms/invariants/invariant.ts';
import { questionnaire } from '../../../src/forms/questionnaire.ts';
import { fixtureForm } from './fixtures.ts';

const sound = questionnaire(fixtureForm());
const unitUrl = 'http://hl7.org/fhir/StructureDefinition/questionnaire-unit';
const minUrl = 'http://hl7.org/fhir/StructureDefinition/minValue';

interface Break {
  /** What is done to a sound Questionnaire, in words. */
  what: string;
  /** The invariant that sees it. */
  by: string;
  /** What it says of it. */
  says: string;
  /** linkId of the item that is broken; the Questionnaire itself without one. */
  at?: string;
  /** Way to what is broken: keys and positions. */
  path: [string | number, ...(string | number)[]];
  /** What is put there; without it, what is there is taken away. */
  put?: unknown;
}

/** Puts a value where a path leads, or takes away what is there. */
function change(target: object, [key, ...rest]: (string | number)[], put: unknown): void {
  const holder = target as Record<string | number, unknown>;
  if (key === undefined) throw new Error('A path leads nowhere.');
  if (rest.length > 0) change(holder[key] as object, rest, put);
  else if (put === undefined) Reflect.deleteProperty(holder, key);
  else holder[key] = put;
}

/** A sound Questionnaire, broken, as it would be read from a file. */
function broken(...breaks: Pick<Break, 'at' | 'path' | 'put'>[]): Questionnaire {
  const copy = structuredClone(sound);
  for (const { at, path, put } of breaks) {
    const target = at === undefined ? copy : itemsOf(copy).find(({ linkId }) => linkId === at);
    if (target === undefined) throw new Error(`The fixture has no item "${String(at)}".`);
    change(target, path, put);
  }
  return JSON.parse(JSON.stringify(copy)) as Questionnaire;
}

const abnormal = { system: 'http://terminology.hl7.org/CodeSystem/v3-ObservationInterpretation', code: 'A' };
const condition = { question: 'finding-none', operator: '=', answerCoding: abnormal };
const detail = 'finding-none.detail';

const identityBreaks: Break[] = [
  {
    what: 'a site as url',
    by: 'identity',
    says: 'url: found "http://localhost/f"',
    path: ['url'],
    put: 'http://localhost/f',
  },
  { what: 'a version in words', by: 'identity', says: 'version: found "next"', path: ['version'], put: 'next' },
  { what: 'no publisher', by: 'identity', says: 'publisher: found nothing', path: ['publisher'] },
  { what: 'no copyright line', by: 'identity', says: 'copyright: found nothing', path: ['copyright'] },
  {
    what: 'a date with a time',
    by: 'identity',
    says: 'date: found "2026-11-25T10:00"',
    path: ['date'],
    put: '2026-11-25T10:00',
  },
  { what: 'a name with a hyphen', by: 'identity', says: 'name: found "a-b"', path: ['name'], put: 'a-b' },
  { what: 'no title', by: 'identity', says: 'title: found " "', path: ['title'], put: ' ' },
  {
    ...{ what: 'a claim to a profile', by: 'identity', says: 'expected no claim to a profile', path: ['meta'] },
    put: { profile: ['http://hl7.org/fhir/uv/sdc/StructureDefinition/sdc-questionnaire'] },
  },
];

const codeBreaks: Break[] = [
  {
    what: 'another resource',
    by: 'codes',
    says: 'resourceType: found "Survey"',
    path: ['resourceType'],
    put: 'Survey',
  },
  { what: 'an unknown status', by: 'codes', says: 'status: found "final"', path: ['status'], put: 'final' },
  { what: 'no subject', by: 'codes', says: 'subjectType: found nothing', path: ['subjectType'] },
  {
    what: 'an unknown type',
    by: 'codes',
    says: 'text-none.type: found "memo"',
    at: 'text-none',
    path: ['type'],
    put: 'memo',
  },
  {
    what: 'the abstract type',
    by: 'codes',
    says: 'type: found "question"',
    at: 'text-none',
    path: ['type'],
    put: 'question',
  },
  {
    what: 'an operator in words',
    by: 'codes',
    says: 'found "is"',
    at: detail,
    path: ['enableWhen', 0, 'operator'],
    put: 'is',
  },
  {
    what: 'an unknown behaviour',
    by: 'codes',
    says: 'found "some"',
    at: detail,
    path: ['enableBehavior'],
    put: 'some',
  },
];

const linkIdBreaks: Break[] = [
  {
    ...{ what: 'a linkId twice', by: 'link-ids', says: 'linkId "text-left.left" is used more than once' },
    ...{ at: 'text-none', path: ['linkId'], put: 'text-left.left' },
  },
  {
    ...{ what: 'a linkId with a capital', by: 'link-ids', says: 'linkId "Text_none" is not well formed' },
    ...{ at: 'text-none', path: ['linkId'], put: 'Text_none' },
  },
  { what: 'no linkId', by: 'link-ids', says: 'linkId nothing is not well formed', at: 'text-none', path: ['linkId'] },
];

const shapeBreaks: Break[] = [
  { what: 'an empty group', by: 'shape', says: 'heart: found an empty group', at: 'heart', path: ['item'], put: [] },
  { what: 'an item without words', by: 'shape', says: 'text-none: found no text', at: 'text-none', path: ['text'] },
  {
    what: 'a line to read that asks',
    by: 'shape',
    says: 'found "required"',
    at: 'look.title',
    path: ['required'],
    put: true,
  },
  {
    ...{ what: 'an option chosen beforehand', by: 'shape', says: 'finding-none: found an answer filled in beforehand' },
    ...{ at: 'finding-none', path: ['answerOption', 0, 'initialSelected'], put: true },
  },
  {
    ...{ what: 'a number filled in beforehand', by: 'shape', says: 'pulse-rate: found an answer filled in beforehand' },
    ...{ at: 'pulse-rate', path: ['initial'], put: [{ valueDecimal: 72 }] },
  },
];

const seen = { system: 'https://fingerbreadth.example/choices/choice-none', code: 'seen', display: 'seen' };
const optionBreaks: Break[] = [
  {
    ...{ what: 'a choice of one', by: 'options', says: 'choice-none: found 1 options' },
    ...{ at: 'choice-none', path: ['answerOption'], put: [{ valueCoding: seen }] },
  },
  {
    ...{ what: 'an option in words only', by: 'options', says: 'found an option of type "valueString"' },
    ...{ at: 'choice-none', path: ['answerOption', 0], put: { valueString: 'seen' } },
  },
  {
    ...{
      what: 'two options with one code',
      by: 'options',
      says: 'two options with code "https://fingerbreadth.example/choices/choice-none|seen"',
    },
    ...{ at: 'choice-none', path: ['answerOption', 1, 'valueCoding', 'code'], put: 'seen' },
  },
  {
    ...{ what: 'two options with the same words', by: 'options', says: 'found two options with display "seen"' },
    ...{ at: 'choice-none', path: ['answerOption', 1, 'valueCoding', 'display'], put: 'seen' },
  },
  {
    ...{ what: 'an option without words', by: 'options', says: 'found an option without display' },
    ...{ at: 'choice-none', path: ['answerOption', 1, 'valueCoding', 'display'] },
  },
  {
    ...{ what: 'options kept elsewhere', by: 'options', says: 'found answerValueSet' },
    ...{ at: 'choice-none', path: ['answerValueSet'], put: 'http://example.org/set' },
  },
  {
    ...{ what: 'options for words', by: 'options', says: 'found options on a "text" item' },
    ...{ at: 'text-none', path: ['answerOption'], put: [{ valueString: 'x' }] },
  },
];

const conditionBreaks: Break[] = [
  {
    ...{
      what: 'a condition on nothing',
      by: 'enable-when',
      says: 'finding-none.detail: found a condition on "finding-nowhere"',
    },
    ...{ at: detail, path: ['enableWhen', 0, 'question'], put: 'finding-nowhere' },
  },
  {
    ...{
      what: 'a condition on a later item',
      by: 'enable-when',
      says: 'on "choice-none", expected an item that comes before',
    },
    ...{ at: detail, path: ['enableWhen', 0, 'question'], put: 'choice-none' },
  },
  {
    ...{
      what: 'a condition of another type',
      by: 'enable-when',
      says: 'found "answerBoolean" for "finding-none", expected answerCoding',
    },
    ...{ at: detail, path: ['enableWhen'], put: [{ question: 'finding-none', operator: '=', answerBoolean: true }] },
  },
  {
    ...{
      what: 'a condition on an answer not offered',
      by: 'enable-when',
      says: '|B", expected an option of "finding-none"',
    },
    ...{ at: detail, path: ['enableWhen', 0, 'answerCoding', 'code'], put: 'B' },
  },
  {
    ...{
      what: 'a condition on a line to read',
      by: 'enable-when',
      says: 'found a condition on the display item "look.title"',
    },
    ...{ at: detail, path: ['enableWhen', 0, 'question'], put: 'look.title' },
  },
  {
    ...{ what: 'a condition without an answer', by: 'enable-when', says: 'found nothing for "finding-none"' },
    ...{ at: detail, path: ['enableWhen', 0, 'answerCoding'] },
  },
  {
    ...{ what: '"exists" with a coded answer', by: 'enable-when', says: 'expected answerBoolean' },
    ...{ at: detail, path: ['enableWhen', 0, 'operator'], put: 'exists' },
  },
  {
    ...{
      what: 'two conditions that are not joined',
      by: 'enable-when',
      says: 'found 2 conditions without enableBehavior',
    },
    ...{ at: detail, path: ['enableWhen'], put: [condition, condition] },
  },
];

const measureBreaks: Break[] = [
  {
    ...{
      what: 'an unknown extension',
      by: 'extensions',
      says: 'found the extension "https://fingerbreadth.example/colour"',
    },
    ...{
      at: 'pulse-rate',
      path: ['extension', 3],
      put: { url: 'https://fingerbreadth.example/colour', valueString: 'red' },
    },
  },
  {
    ...{ what: 'a unit for words', by: 'extensions', says: 'on a "text" item' },
    ...{ at: 'text-none', path: ['extension'], put: [{ url: unitUrl, valueCoding: { code: 'cm' } }] },
  },
  {
    ...{ what: 'a limit in words', by: 'extensions', says: 'without valueDecimal' },
    ...{ at: 'pulse-rate', path: ['extension', 0], put: { url: minUrl, valueString: '0' } },
  },
  {
    what: 'a number without limits',
    by: 'extensions',
    says: `found "${minUrl}" 0 times`,
    at: 'pulse-rate',
    path: ['extension'],
  },
  {
    ...{ what: 'a range the wrong way round', by: 'ranges', says: 'pulse-rate: found the range 400 to 300' },
    ...{ at: 'pulse-rate', path: ['extension', 0, 'valueDecimal'], put: 400 },
  },
  {
    ...{ what: 'a unit that is not UCUM', by: 'units', says: 'found the unit "mmHg"' },
    ...{ at: 'pulse-rate', path: ['extension', 2, 'valueCoding', 'code'], put: 'mmHg' },
  },
  {
    ...{ what: 'a unit of no system', by: 'units', says: 'found the unit system nothing' },
    ...{ at: 'pulse-rate', path: ['extension', 2, 'valueCoding', 'system'] },
  },
  {
    ...{ what: 'a unit without words', by: 'units', says: 'found a unit without display' },
    ...{ at: 'pulse-rate', path: ['extension', 2, 'valueCoding', 'display'] },
  },
];

const loincBreaks: Break[] = [
  {
    ...{ what: 'a wrong check digit', by: 'loinc', says: 'found the LOINC code "8867-5"' },
    ...{ at: 'pulse-rate', path: ['code', 0, 'code'], put: '8867-5' },
  },
  {
    what: 'a code without its name',
    by: 'loinc',
    says: '"8867-4" without display',
    at: 'pulse-rate',
    path: ['code', 0, 'display'],
  },
  {
    ...{ what: 'a code of another system', by: 'loinc', says: 'found the code system "http://snomed.info/sct"' },
    ...{ at: 'pulse-rate', path: ['code', 0, 'system'], put: 'http://snomed.info/sct' },
  },
  {
    what: "a code without LOINC's notice",
    by: 'loinc',
    says: "without LOINC's notice",
    path: ['copyright'],
    put: 'CC BY 4.0.',
  },
];

const breaks = [
  identityBreaks,
  codeBreaks,
  linkIdBreaks,
  shapeBreaks,
  optionBreaks,
  conditionBreaks,
  measureBreaks,
  loincBreaks,
].flat();

describe('the invariants', () => {
  it('find nothing in a sound Questionnaire', () => {
    expect(invariants(sound)).toEqual([]);
  });

  it.each(breaks)('see $what ($by)', ({ by, says, ...how }) => {
    const faults = invariants(broken(how));
    const told = faults.filter((fault) => fault.endsWith(`(${by})`) && fault.includes(says));
    expect(told.length, faults.join('\n')).toBeGreaterThan(0);
  });

  it('are each proven by at least one broken Questionnaire', () => {
    const proven = new Set(breaks.map(({ by }) => by));
    expect(allInvariants.map(({ name }) => name).filter((name) => !proven.has(name))).toEqual([]);
  });

  it('report every fault in one run', () => {
    const faults = invariants(
      broken(
        { path: ['version'], put: 'next' },
        { at: 'pulse-rate', path: ['extension', 0, 'valueDecimal'], put: 400 },
      ),
    );
    expect(faults).toEqual([
      'version: found "next", expected MAJOR.MINOR.PATCH (identity)',
      'pulse-rate: found the range 400 to 300, expected the first number below the second (ranges)',
    ]);
  });
});
