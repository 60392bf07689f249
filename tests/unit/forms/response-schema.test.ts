import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { loincNotice } from '../../../src/forms/loinc.ts';
import { responseSchema } from '../../../src/forms/response-schema.ts';
import { fixtureForm } from './fixtures.ts';

const form = fixtureForm();
const schema = responseSchema(form);
const validate = new Ajv2020({ strict: true, strictRequired: false, allErrors: true }).compile(schema);
const filled = (answers: object, identity: object = {}) => ({
  ...{ form: form.url, version: form.version, hash: form.hash, answers },
  ...identity,
});

/** Answers that a form may hold. */
const good: [string, object][] = [
  ['nothing yet', {}],
  ['a normal finding', { 'finding-none': 'N' }],
  ['an abnormal finding without detail', { 'finding-none': 'A' }],
  ['an abnormal finding with detail', { 'finding-both.right': 'A', 'finding-both.right.detail': 'Two nodes, 1 cm' }],
  ['a finding not examined, with its reason', { 'finding-none': 'not-performed', 'finding-none.reason': 'declined' }],
  ['a grade', { 'scale-none': '4+' }],
  ['a choice', { 'choice-none': 'above-the-jaw' }],
  [
    'the side that was used and a number',
    { 'quantity-either.side': 'left', 'quantity-either': { value: 3.5, unit: 'cm' } },
  ],
  ['the smallest number', { 'quantity-none': { value: -5, unit: 'cm' } }],
  ['the largest number', { 'quantity-none': { value: 20, unit: 'cm' } }],
  ['a count', { 'beat-count': { value: 12, unit: '1' } }],
  ['words on each side', { 'text-both.right': 'scar', 'text-both.left': 'none seen' }],
];

/** Answers that no form may hold, and the keyword that refuses them. */
const bad: [string, object, string][] = [
  ['a field that is not on the form', { 'finding-nowhere': 'N' }, 'additionalProperties'],
  ['a finding in words', { 'finding-none': 'normal' }, 'oneOf'],
  ['a detail of a normal finding', { 'finding-none': 'N', 'finding-none.detail': 'x' }, 'const'],
  ['a detail without its finding', { 'finding-none.detail': 'x' }, 'required'],
  ['a detail of the other side', { 'finding-both.left': 'A', 'finding-both.right.detail': 'x' }, 'required'],
  ['an empty detail', { 'finding-none': 'A', 'finding-none.detail': ' ' }, 'pattern'],
  ['a reason for an abnormal finding', { 'finding-none': 'A', 'finding-none.reason': 'declined' }, 'const'],
  ['a reason without its finding', { 'finding-none.reason': 'declined' }, 'required'],
  ['an unknown reason', { 'finding-none': 'not-performed', 'finding-none.reason': 'forgot' }, 'oneOf'],
  ['a grade that the scale does not have', { 'scale-none': '6' }, 'oneOf'],
  ['a grade as a number', { 'scale-none': 5 }, 'oneOf'],
  ['a choice by its words', { 'choice-none': 'above the jaw' }, 'oneOf'],
  ['a third side', { 'quantity-either.side': 'both' }, 'oneOf'],
  ['a number below the range', { 'quantity-none': { value: -5.1, unit: 'cm' } }, 'minimum'],
  ['a number above the range', { 'quantity-none': { value: 20.1, unit: 'cm' } }, 'maximum'],
  ['a number in another unit', { 'quantity-none': { value: 3, unit: 'mm' } }, 'const'],
  ['a number without its unit', { 'quantity-none': { value: 3 } }, 'required'],
  ['a bare number', { 'quantity-none': 3 }, 'type'],
  ['a number as text', { 'quantity-none': { value: '3', unit: 'cm' } }, 'type'],
  ['more than number and unit', { 'quantity-none': { value: 3, unit: 'cm', normal: true } }, 'additionalProperties'],
  ['a list of words', { 'text-none': ['a'] }, 'type'],
];

/** Forms that say wrongly which form they are. */
const strangers: [string, object, string][] = [
  ['another form', { form: 'https://fingerbreadth.example/forms/other' }, 'const'],
  ['another version', { version: '0.2.0' }, 'const'],
  ['other content', { hash: '0'.repeat(64) }, 'const'],
  ['a patient', { patient: 'somebody' }, 'additionalProperties'],
  ['no version', { version: undefined }, 'required'],
];

const keywords = () => validate.errors?.map(({ keyword }) => keyword);

describe('the JSON Schema of a filled form', () => {
  it.each(good)('accepts %s', (_, answers) => {
    expect(validate(filled(answers)), JSON.stringify(validate.errors)).toBe(true);
  });

  it.each(bad)('refuses %s', (_, answers, keyword) => {
    expect(validate(filled(answers))).toBe(false);
    expect(keywords()).toContain(keyword);
  });

  it.each(strangers)('refuses a form that names %s', (_, identity, keyword) => {
    const file = JSON.parse(JSON.stringify(filled({}, identity))) as unknown;
    expect(validate(file)).toBe(false);
    expect(keywords()).toContain(keyword);
  });

  it("carries the copyright line, LOINC's notice included", () => {
    expect(schema['$comment']).toContain(loincNotice);
  });

  it('is the same each time', () => {
    expect(JSON.stringify(responseSchema(fixtureForm()))).toBe(JSON.stringify(schema));
  });
});
