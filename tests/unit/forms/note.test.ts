import { describe, expect, it } from 'vitest';
import { answersOf } from '../../../src/forms/answers.ts';
import { enteredNumber, numberFault } from '../../../src/forms/entered-number.ts';
import type { Filled } from '../../../src/forms/filled.ts';
import { fieldsOf, sliceOf } from '../../../src/forms/form-slice.ts';
import { noteOf } from '../../../src/forms/note.ts';
import { present } from '../../fixtures/present.ts';
import { fixtureForm } from './fixtures.ts';

const form = fixtureForm();
const note = (...answers: [string, string][]): string => noteOf(form, new Map(answers));

/** The note between its head and the line that says what it leaves out. */
const body = (...answers: [string, string][]): string[] =>
  note(...answers)
    .split('\n')
    .slice(2, -3);

describe('the note of a filled form', () => {
  it('is empty for a blank form: nothing is normal by itself', () => {
    expect(note()).toBe('');
    expect(note(['finding-none', '  '])).toBe('');
  });

  it('says which form it comes from and that what is not named does not count as normal', () => {
    const lines = note(['finding-none', 'N']).split('\n');
    expect(lines[0]).toBe(`Fixture examination. Form fixture-form 0.1.0 (draft), code ${form.hash.slice(0, 8)}.`);
    expect(lines.at(-2)).toMatch(
      /^ABNORMAL marks only .* What is not named here was not recorded; it does not count as normal\.$/,
    );
    expect(note(['finding-none', 'N'])).toMatch(/\n$/);
  });

  it('names what was answered alone', () => {
    expect(body(['finding-none', 'N'])).toEqual([
      'Neck',
      '- Do look',
      '  Fixture finding, asked none: normal (smooth, up to 3\u202fcm)',
    ]);
  });

  it.each([
    [
      'an abnormal finding with its detail',
      [
        ['finding-none', 'A'],
        ['finding-none.detail', ' hard\n edge '],
      ],
      '  Fixture finding, asked none: ABNORMAL: hard edge',
    ],
    [
      'an abnormal finding without',
      [['finding-none', 'A']],
      '  Fixture finding, asked none: ABNORMAL, no detail given',
    ],
    ['a grade', [['scale-none', '4+']], '  Fixture scale, asked none: 4+ – nearly all'],
    ['a choice', [['choice-none', 'above-the-jaw']], '  Fixture choice, asked none: above the jaw'],
    ['a number', [['quantity-none', '4.5']], '  Fixture quantity, asked none: 4.5\u202fcm (normal: at most 3\u202fcm)'],
    [
      'a negative number',
      [['quantity-none', '−2']],
      '  Fixture quantity, asked none: −2\u202fcm (normal: at most 3\u202fcm)',
    ],
    [
      'a number out of range',
      [['quantity-none', '40']],
      '  Fixture quantity, asked none: 40\u202fcm (outside −5 to 20\u202fcm, what the form accepts: check; normal: at most 3\u202fcm)',
    ],
    [
      'what is no number',
      [['quantity-none', '4,5']],
      '  Fixture quantity, asked none: “4,5” (not a number that can be read)',
    ],
    ['words', [['text-none', 'soft']], '  Fixture text, asked none: soft'],
    ['the side used', [['choice-either.side', 'right']], '  Fixture choice, asked either: side used: Right'],
  ] as [string, [string, string][], string][])('writes %s', (_what, answers, line) => {
    expect(body(...answers)).toHaveLength(3);
    expect(body(...answers)[2]).toContain(line);
  });

  it('gives both sides one line where they are the same, else each its own', () => {
    expect(body(['finding-both.right', 'N'], ['finding-both.left', 'N']).slice(2)).toEqual([
      '  Fixture finding, asked both, right and left: normal (smooth, up to 3\u202fcm)',
    ]);
    expect(body(['finding-both.left', 'N'], ['finding-both.right', 'A']).slice(2)).toEqual([
      '  Fixture finding, asked both, right: ABNORMAL, no detail given',
      '  Fixture finding, asked both, left: normal (smooth, up to 3\u202fcm)',
    ]);
    expect(body(['finding-both.left', 'N']).slice(2)).toEqual([
      '  Fixture finding, asked both, left: normal (smooth, up to 3\u202fcm)',
    ]);
  });

  it('lists apart what was marked as not examined, with the reason', () => {
    const lines = body(
      ['finding-none', 'not-performed'],
      ['finding-none.reason', 'declined'],
      ['finding-right.right', 'not-performed'],
      ['text-none', 'soft'],
    );
    expect(lines).toEqual([
      'Neck',
      '- Do look',
      '  Fixture text, asked none: soft',
      '',
      'Not examined',
      '  Fixture finding, asked none (declined)',
      '  Fixture finding, asked right, right (no reason given)',
    ]);
  });

  it('leaves out a detail whose finding is no longer abnormal', () => {
    expect(note(['finding-none', 'N'], ['finding-none.detail', 'left behind'])).not.toContain('left behind');
    expect(note(['finding-none.detail', 'left behind'])).toBe('');
  });

  it('keeps the order of the form, whatever the order of the answers', () => {
    const all: Filled = new Map(
      fieldsOf(form)
        .map((field) => [field.linkId, codeOrWords(field.linkId)] as const)
        .toReversed(),
    );
    const titles = noteOf(form, all)
      .split('\n')
      .filter((line) => line.startsWith('- '));
    const items = form.sections.flatMap((section) => section.items).filter(({ fields }) => fields.length > 0);
    expect(titles).toEqual(items.map(({ title }) => `- ${title}`));
  });

  it('is the same from the slice that a page carries', () => {
    const filled = new Map(fieldsOf(form).map(({ linkId }) => [linkId, codeOrWords(linkId)]));
    expect(noteOf(sliceOf(form), filled)).toBe(noteOf(form, filled));
  });

  it('refuses a code that the form does not offer', () => {
    expect(() => note(['scale-none', 'nonsense'])).toThrow('"scale-none" does not offer the answer "nonsense"');
  });
});

/** Some valid answer to a field. */
function codeOrWords(linkId: string): string {
  const field = present(fieldsOf(form).find((each) => each.linkId === linkId));
  const [answer] = answersOf(field);
  return answer?.type === 'coded' ? present(answer.options[0]).code : '7';
}

describe('a number that was typed', () => {
  it.each([
    ['2', 2],
    [' 2.5 ', 2.5],
    ['.5', 0.5],
    ['3.', 3],
    ['-4', -4],
    ['−4', -4],
    ['+4', 4],
  ])('%j is read', (typed, number) => {
    expect(enteredNumber(typed)).toBe(number);
  });

  it.each(['', '2,5', '1 000', '2 cm', '1e3', '0x10', '--2', '.', 'two', '١'])('%j is not', (typed) => {
    expect(enteredNumber(typed)).toBeUndefined();
  });

  it('has a fault in words outside its range or when it cannot be read, and none at the ends', () => {
    const limits = { min: -5, max: 20, unit: 'cm' };
    expect(numberFault('-5', limits)).toBeUndefined();
    expect(numberFault('20', limits)).toBeUndefined();
    expect(numberFault('20.1', limits)).toMatch(/^Outside −5 to 20\u202fcm/);
    expect(numberFault('x', limits)).toMatch(/^Not a number/);
  });
});
