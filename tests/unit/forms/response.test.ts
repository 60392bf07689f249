import { describe, expect, it } from 'vitest';
import { answersOf, type Answer } from '../../../src/forms/answers.ts';
import { type Filled } from '../../../src/forms/filled.ts';
import { fieldsOf } from '../../../src/forms/form-slice.ts';
import { noteOf } from '../../../src/forms/note.ts';
import { questionnaireResponse } from '../../../src/forms/response.ts';
import { readResponse } from '../../../src/forms/response-answers.ts';
import { present } from '../../fixtures/present.ts';
import { fixtureForm } from './fixtures.ts';

const form = fixtureForm();
const answers = fieldsOf(form).flatMap(answersOf);
const authored = '2026-11-25T10:00:00+00:00';
const responseTo = (filled: Filled) => questionnaireResponse(form, filled, authored);

/** Every blank that stands open when its finding has this answer, filled with its last option, 7, or words. */
function everythingFilled(finding: 'N' | 'A' | 'not-performed'): Filled {
  const given = (answer: Answer): string => {
    if (answer.part === undefined && answer.field.kind === 'finding') return finding;
    if (answer.type === 'coded') return present(answer.options.at(-1)).code;
    return answer.type === 'number' ? '7' : `words for ${answer.linkId}`;
  };
  const open = answers.filter(({ when }) => when === undefined || when.option.code === finding);
  return new Map(open.map((answer) => [answer.linkId, given(answer)]));
}

describe('the response of a filled form', () => {
  it('names the form and its version, and neither patient nor author; it is not called complete', () => {
    expect(responseTo(new Map())).toEqual({
      ...{ resourceType: 'QuestionnaireResponse', language: 'en-GB', status: 'in-progress', authored },
      questionnaire: 'https://fingerbreadth.example/forms/fixture-form|0.1.0',
    });
  });

  it.each(['N', 'A', 'not-performed'] as const)('reads back whole when every finding is %s', (finding) => {
    const filled = everythingFilled(finding);
    const read = readResponse(form, JSON.parse(JSON.stringify(responseTo(filled))));
    expect(read.faults).toEqual([]);
    expect(new Map(read.filled)).toEqual(filled);
    expect(noteOf(form, read.filled)).toBe(noteOf(form, filled));
  });

  it('leaves out what another answer has closed, and a number that cannot be read', () => {
    const filled = new Map([
      ['finding-none', 'N'],
      ['finding-none.detail', 'left behind'],
      ['quantity-none', 'three'],
    ]);
    const [group] = present(responseTo(filled).item);
    expect(group?.item).toEqual([
      expect.objectContaining({ linkId: 'finding-none', answer: [{ valueCoding: normal }] }),
    ]);
  });

  it('keeps a number out of range', () => {
    expect(JSON.stringify(responseTo(new Map([['quantity-none', '999']])))).toContain('"valueDecimal":999');
  });
});

const normal = {
  system: 'http://terminology.hl7.org/CodeSystem/v3-ObservationInterpretation',
  code: 'N',
  display: 'Normal',
};

/** A response with these items in the second section, else as it should be. */
const withItems = (...item: object[]): object => ({
  ...{ resourceType: 'QuestionnaireResponse', questionnaire: `${form.url}|${form.version}`, status: 'completed' },
  item: [{ linkId: 'neck', item }],
});
const text = (linkId: string, valueString: string): object => ({ linkId, answer: [{ valueString }] });

describe('a response that cannot be read whole', () => {
  it('is read where nothing is wrong: nested, with lines that ask nothing, a whole number as integer', () => {
    const read = readResponse(
      form,
      withItems({ linkId: 'look.title' }, { linkId: 'quantity-none', answer: [{ valueInteger: 4 }] }),
    );
    expect(read).toEqual({ faults: [], filled: new Map([['quantity-none', '4']]) });
  });

  it.each([
    ['something else', { ...withItems(), resourceType: 'Questionnaire' }, /^resourceType: /],
    ['no object', [], /^the file: /],
    ['an answer that is no list', withItems({ linkId: 'text-none', answer: 'soft' }), /^item.0.item.0.answer: /],
    [
      'another form',
      { ...withItems(), questionnaire: 'https://elsewhere.example/f|0.1.0' },
      /expected "https:\/\/fing/,
    ],
    ['another version', { ...withItems(), questionnaire: `${form.url}|9.0.0` }, /expected .*\|0\.1\.0"/],
    ['no version', { ...withItems(), questionnaire: form.url }, /expected .*\|0\.1\.0"/],
    ['an unknown blank', withItems(text('spleen', 'soft')), /^spleen: the form has no blank/],
    ['an answered heading', withItems(text('look.title', 'soft')), /^look.title: the form has no blank/],
    [
      'two answers',
      withItems({ linkId: 'text-none', answer: [{ valueString: 'a' }, { valueString: 'b' }] }),
      /more than once/,
    ],
    ['a blank twice', withItems(text('text-none', 'a'), text('text-none', 'b')), /more than once/],
    ['words for a number', withItems(text('quantity-none', '4')), /^quantity-none: expected a number/],
    [
      'a number for words',
      withItems({ linkId: 'text-none', answer: [{ valueDecimal: 4 }] }),
      /^text-none: expected words/,
    ],
    ['words without a letter', withItems(text('text-none', '  ')), /^text-none: expected words/],
    ['words for a code', withItems(text('scale-none', '5')), /^scale-none: expected in valueCoding/],
    [
      'a code without its system',
      withItems({ linkId: 'finding-none', answer: [{ valueCoding: { code: 'N' } }] }),
      /expected in valueCoding/,
    ],
    [
      'a code of no option',
      withItems({ linkId: 'finding-none', answer: [{ valueCoding: { ...normal, code: 'H' } }] }),
      /expected in valueCoding/,
    ],
    ['a detail of nothing', withItems(text('finding-none.detail', 'hard')), /although "finding-none" is not "A"/],
    [
      'a detail of what is normal',
      withItems({ linkId: 'finding-none', answer: [{ valueCoding: normal }] }, text('finding-none.detail', 'hard')),
      /although "finding-none" is not "A"/,
    ],
  ])('says so for %s', (_what, response, fault) => {
    const { faults } = readResponse(form, response);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatch(fault);
  });
});
