import type { QuestionnaireItem } from '@medplum/fhirtypes';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { type Answer, answersOfForm } from '../../../src/forms/answers.ts';
import { codebook } from '../../../src/forms/codebook.ts';
import { itemsOf } from '../../../src/forms/invariants/invariant.ts';
import { questionnaire } from '../../../src/forms/questionnaire.ts';
import { responseSchema } from '../../../src/forms/response-schema.ts';
import { fieldsOf, fixtureForm } from './fixtures.ts';

const form = fixtureForm();

/** What every format must say of a blank, in the same words. */
interface Told {
  label: string;
  unit: string;
  range: string;
  options: string;
}

const noMeasure = { unit: '', range: '' };

function toldByForm(answer: Answer): Told {
  const measure = answer.type === 'number' ? { unit: answer.unit, range: `${answer.min}..${answer.max}` } : noMeasure;
  const options = answer.type === 'coded' ? answer.options.map(({ code }) => code).join() : '';
  return { label: answer.label, ...measure, options };
}

function toldByItem({ text = '', extension = [], answerOption = [] }: QuestionnaireItem): Told {
  const [min, max, unit] = extension;
  const measure =
    unit === undefined
      ? noMeasure
      : { unit: unit.valueCoding?.code ?? '', range: `${min?.valueDecimal}..${max?.valueDecimal}` };
  return { label: text, ...measure, options: answerOption.map(({ valueCoding }) => valueCoding?.code).join() };
}

interface AnswerSchema {
  title: string;
  oneOf?: { const: string }[];
  properties?: { value: { minimum: number; maximum: number }; unit: { const: string } };
}

function toldBySchema({ title, oneOf = [], properties }: AnswerSchema): Told {
  const { value, unit } = properties ?? {};
  const measure =
    value === undefined ? noMeasure : { unit: unit?.const ?? '', range: `${value.minimum}..${value.maximum}` };
  return { label: title, ...measure, options: oneOf.map((option) => option.const).join() };
}

function toldByRow({ label = '', unit = '', min = '', max = '', options = '' }: Record<string, string>): Told {
  const codes = options === '' ? [] : options.split(' | ').map((option) => option.split('=')[0]);
  return { label, unit, range: min === '' ? '' : `${min}..${max}`, options: codes.join() };
}

const asked = itemsOf(questionnaire(form)).filter(({ type }) => type !== 'group' && type !== 'display');
const { properties } = (responseSchema(form)['properties'] as { answers: { properties: Record<string, AnswerSchema> } })
  .answers;
const rows = parse<Record<string, string>>(codebook(form), { columns: true });

const expected = answersOfForm(form).map(({ answer }) => [answer.linkId, toldByForm(answer)]);

describe('every blank of the form stands once in each format, with the same label, unit, range and options', () => {
  it('holds every field that the form has, and the two lines of each finding', () => {
    const lines = fieldsOf(form).flatMap((field) =>
      field.kind === 'finding' ? [field.linkId, field.reason, field.detail] : [field.linkId],
    );
    expect(expected.map(([linkId]) => linkId)).toEqual(lines);
    expect(new Set(lines).size).toBe(lines.length);
  });

  it('in the Questionnaire', () => {
    expect(asked.map((item) => [item.linkId, toldByItem(item)])).toEqual(expected);
  });

  it('in the JSON Schema', () => {
    expect(Object.entries(properties).map(([linkId, schema]) => [linkId, toldBySchema(schema)])).toEqual(expected);
  });

  it('in the codebook', () => {
    expect(rows.map((row) => [row['id'], toldByRow(row)])).toEqual(expected);
  });

  it('with the side that the form gives it, in linkId, label and codebook', () => {
    for (const { linkId, side, label } of fieldsOf(form)) {
      const sided =
        side === 'none' ? !/\.(right|left)$/.test(linkId) : linkId.endsWith(`.${side}`) && label.endsWith(`, ${side}`);
      expect(sided, linkId).toBe(true);
      expect(rows.find(({ id }) => id === linkId)?.['side'], linkId).toBe(side);
    }
  });
});
