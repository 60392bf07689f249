/**
 * Every release by outside definitions: JSON Schema 2020-12 (json-schema.org), whose own schema Ajv holds and applies; CSV
 * of RFC 4180, read by csv-parse in strict mode. The R4 definitions are applied in fhir.test.ts.
 */
import { Ajv2020 } from 'ajv/dist/2020.js';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import type { Form } from '../../schemas/form.ts';
import { type Answer, answersOfForm } from '../../src/forms/answers.ts';
import { codebook } from '../../src/forms/codebook.ts';
import { isOpen } from '../../src/forms/filled.ts';
import { questionnaire } from '../../src/forms/questionnaire.ts';
import { requireReleases } from '../../src/forms/releases/load.ts';
import { checkResponse } from '../../src/forms/response-check/check-response.ts';
import { questionnaireResponse } from '../../src/forms/response.ts';
import { responseSchema } from '../../src/forms/response-schema.ts';
import { present } from '../fixtures/present.ts';

const releases = [...requireReleases('content').values()].flat();

/** The form with an answer in every blank that is open when the findings before it have their nth answer. */
function answersOf(form: Form, nth: number): Map<string, string> {
  const filled = new Map<string, string>();
  for (const { answer } of answersOfForm(form))
    if (isOpen(answer, filled)) filled.set(answer.linkId, given(answer, nth));
  return filled;
}

function given(answer: Answer, nth: number): string {
  if (answer.type === 'coded') return present(answer.options[nth % answer.options.length]).code;
  return answer.type === 'number' ? String(nth % 2 === 0 ? answer.min : answer.max) : 'in words';
}

/** The same answers as the JSON Schema has them. */
function asData({ url, version, hash, ...form }: Form, filled: ReadonlyMap<string, string>): object {
  const all = answersOfForm({ url, version, hash, ...form }).map(({ answer }) => answer);
  const answers = all.flatMap((answer) => {
    const value = filled.get(answer.linkId);
    if (value === undefined) return [];
    return [[answer.linkId, answer.type === 'number' ? { value: Number(value), unit: answer.unit } : value] as const];
  });
  return { form: url, version, hash, answers: Object.fromEntries(answers) };
}

describe.each(releases.map((form) => [form.id, form.version, form] as const))('%s %s', (_id, _version, form) => {
  it('has a JSON Schema that takes a filled form and no other', () => {
    const validate = new Ajv2020({ strict: true, strictRequired: false, code: { optimize: false } }).compile(
      responseSchema(form),
    );
    for (const nth of [0, 1, 2]) {
      const data = asData(form, answersOf(form, nth));
      expect(validate(data), JSON.stringify(validate.errors)).toBe(true);
      expect(validate({ ...data, version: '99.0.0' })).toBe(false);
      expect(validate({ ...data, answers: { nothing: 'N' } })).toBe(false);
    }
  });

  it('has a codebook of one row for each blank, none with a cell too many or too few', () => {
    const rows: Record<string, string>[] = parse(codebook(form), {
      columns: true,
      bom: true,
      relax_column_count: false,
    });
    expect(rows.map(({ id }) => id)).toEqual(answersOfForm(form).map(({ answer }) => answer.linkId));
    for (const row of rows) expect(Object.values(row).join('')).not.toMatch(/undefined|\[object/);
  });

  it('has a Questionnaire whose filled forms are without fault, with every finding abnormal or none examined', () => {
    const asked = questionnaire(form);
    for (const nth of [1, 2]) {
      const response = questionnaireResponse(form, answersOf(form, nth), '2026-11-25T10:00:00Z');
      expect(checkResponse(asked, response)).toEqual([]);
    }
  });
});
