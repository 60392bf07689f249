import type { QuestionnaireItem } from '@medplum/fhirtypes';
import { describe, expect, it } from 'vitest';
import type { FormSection } from '../../../schemas/form.ts';
import { itemsOf } from '../../../src/forms/invariants/invariant.ts';
import { questionnaire } from '../../../src/forms/questionnaire.ts';
import { fieldsOf, fixtureForm } from './fixtures.ts';

const form = fixtureForm();
const built = questionnaire(form);
const items = itemsOf(built);
const item = (linkId: string): QuestionnaireItem | undefined => items.find((each) => each.linkId === linkId);
const interpretation = 'http://terminology.hl7.org/CodeSystem/v3-ObservationInterpretation';
const absent = 'http://terminology.hl7.org/CodeSystem/data-absent-reason';

describe('the Questionnaire of a form', () => {
  it('says which form it is', () => {
    expect(built).toMatchObject({
      ...{ resourceType: 'Questionnaire', id: 'fixture-form', name: 'FixtureForm', version: '0.1.0', status: 'draft' },
      ...{ url: 'https://fingerbreadth.example/forms/fixture-form', date: '2026-11-25', publisher: 'Fingerbreadth' },
      identifier: [{ system: 'https://fingerbreadth.example/form-content-sha256', value: form.hash }],
      copyright: form.copyright,
    });
    expect(built).not.toHaveProperty('meta');
  });

  it('says what it leaves out, and that a filled form is a health record', () => {
    expect(built.description).toContain('Everything real.');
    expect(built.description).toContain('health record');
    expect(built.description).toMatch(/^Must not be missed: A pulseless hand; A silent chest\./);
  });

  it('holds one group for each section, in order', () => {
    expect(built.item?.map(({ linkId, type, text }) => [linkId, type, text])).toEqual(
      form.sections.map(({ linkId, title }) => [linkId, 'group', title]),
    );
  });

  it('asks each field once', () => {
    for (const { linkId } of fieldsOf(form)) {
      expect(
        items.filter((each) => each.linkId === linkId),
        linkId,
      ).toHaveLength(1);
    }
  });

  it('asks a finding as normal, abnormal or not examined, in HL7 codes', () => {
    expect(item('finding-both.right')).toEqual({
      linkId: 'finding-both.right',
      text: 'Fixture finding, asked both, right',
      type: 'choice',
      answerOption: [
        { valueCoding: { system: interpretation, code: 'N', display: 'Normal' } },
        { valueCoding: { system: interpretation, code: 'A', display: 'Abnormal' } },
        { valueCoding: { system: absent, code: 'not-performed', display: 'Not Performed' } },
      ],
    });
  });

  it('opens the detail when abnormal', () => {
    expect(item('finding-both.right.detail')).toEqual({
      linkId: 'finding-both.right.detail',
      text: 'Fixture finding, asked both, right: detail',
      type: 'text',
      enableWhen: [
        {
          question: 'finding-both.right',
          operator: '=',
          answerCoding: { system: interpretation, code: 'A', display: 'Abnormal' },
        },
      ],
    });
  });

  it('opens the reason when not examined', () => {
    const reason = item('finding-none.reason');
    expect(reason?.enableWhen?.[0]?.answerCoding?.code).toBe('not-performed');
    expect(reason?.answerOption?.map(({ valueCoding }) => valueCoding?.display)).toEqual([
      ...['Declined', 'Unable', 'Not indicated', 'No time', 'Part absent'],
    ]);
  });

  it('asks a quantity as a decimal with unit and limits', () => {
    expect(item('quantity-none')).toEqual({
      linkId: 'quantity-none',
      text: 'Fixture quantity, asked none',
      type: 'decimal',
      extension: [
        { url: 'http://hl7.org/fhir/StructureDefinition/minValue', valueDecimal: -5 },
        { url: 'http://hl7.org/fhir/StructureDefinition/maxValue', valueDecimal: 20 },
        {
          url: 'http://hl7.org/fhir/StructureDefinition/questionnaire-unit',
          valueCoding: { system: 'http://unitsofmeasure.org', code: 'cm', display: 'cm' },
        },
      ],
    });
  });

  it('offers grades from a code system of the scale, at an address that is no site', () => {
    expect(item('scale-none')?.answerOption?.[1]?.valueCoding).toEqual({
      system: 'https://fingerbreadth.example/scales/fixture-grades',
      code: '4+',
      display: '4+ – nearly all',
    });
  });

  it('offers a choice from a code system of the record, and a side from that of sides', () => {
    expect(item('choice-both.left')?.answerOption?.[0]?.valueCoding?.system).toBe(
      'https://fingerbreadth.example/choices/choice-both',
    );
    expect(item('choice-either.side')?.answerOption?.[0]?.valueCoding).toEqual({
      system: 'https://fingerbreadth.example/codes/side',
      code: 'right',
      display: 'Right',
    });
  });

  it('gives LOINC codes with the official name', () => {
    expect(item('pulse-rate')?.code).toEqual([{ system: 'http://loinc.org', code: '8867-4', display: 'Heart rate' }]);
  });

  it('puts consent, red flags and cautions before the fields, as items that every renderer shows', () => {
    const texts = (group: number) =>
      built.item?.[group]?.item?.filter(({ type }) => type === 'display').map(({ text }) => text);
    expect(texts(1)?.slice(0, 5)).toEqual([
      'Do look',
      'Red flag, act now: It stops. Call for help.',
      'Red flag, same-day senior review: It slows. Ask a senior.',
      'Red flag, appointment within the days that the local protocol gives: It wanders. Book a visit.',
      'Caution: Gently.',
    ]);
    expect(texts(2)?.[1]).toMatch(/^Sensitive examination: .*consent.*chaperone.*right to stop/);
  });

  it('keeps the safety lines of an item that asks nothing', () => {
    expect(built.item?.[0]?.item?.map(({ text }) => text)).toEqual(['Do greet', 'Caution: Ask about pain first.']);
  });

  it('says what is normal once for each record, before its sides', () => {
    expect(item('finding-both.normal')?.text).toBe('Fixture finding, asked both, normal: Smooth, up to 3\u202fcm');
    expect(item('quantity-either.normal')?.text).toBe('Fixture quantity, asked either, normal: at most 3\u202fcm');
    expect(item('scale-none.normal')?.text).toBe('Fixture scale, asked none, normal: 5 – all');
    expect(item('text-none.normal')).toBeUndefined();
  });

  it('is the same each time', () => {
    expect(JSON.stringify(questionnaire(fixtureForm()))).toBe(JSON.stringify(built));
  });

  it('is not built when it would break an invariant', () => {
    const twice = fixtureForm();
    twice.sections[0] = { ...twice.sections[0], linkId: 'neck' } as FormSection;
    expect(() => questionnaire(twice)).toThrow(
      /form "fixture-form" is not sound:\nlinkId "neck" is used more than once/,
    );
  });
});
