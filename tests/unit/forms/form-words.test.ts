import { describe, expect, it } from 'vitest';
import { askedOf, countsOf, sizeWords } from '../../../src/components/form-words.ts';
import { answersOfForm } from '../../../src/forms/answers.ts';
import { fieldsOf, fixtureForm } from './fixtures.ts';

const form = fixtureForm();
const items = form.sections.flatMap((section) => section.items);
const asked = items.flatMap(askedOf);

describe('what the page of a form shows', () => {
  it('holds every field once, in order', () => {
    expect(asked.flatMap(({ fields }) => fields)).toEqual(fieldsOf(form));
  });

  it('puts the two sides of a record together, the right first, and the side that was used apart', () => {
    expect(asked.slice(1, 2).map(({ label, fields }) => [label, fields.map(({ side }) => side)])).toEqual([
      ['Fixture finding, asked both', ['right', 'left']],
    ]);
    const either = asked.filter(({ fields }) => fields[0]?.record === 'quantity-either');
    expect(either.map(({ label }) => label)).toEqual([
      'Fixture quantity, asked either: side used',
      'Fixture quantity, asked either',
    ]);
  });

  it('says what is normal and which numbers are accepted', () => {
    const notes = (record: string) => asked.find(({ fields }) => fields[0]?.record === record)?.notes;
    expect(notes('quantity-none')).toEqual(['Normal: at most 3\u202fcm.', 'Accepts −5 to 20\u202fcm.']);
    expect(notes('text-none')).toEqual([]);
  });

  it('counts manoeuvres and blanks', () => {
    expect(countsOf(form)).toEqual({ manoeuvres: 4, blanks: answersOfForm(form).length });
  });

  it.each([
    [0, '1 KB'],
    [1499, '1 KB'],
    [1500, '2 KB'],
    [68_210, '68 KB'],
  ])('gives the size of %d bytes as %s', (bytes, words) => {
    expect(sizeWords(new Uint8Array(bytes))).toBe(words);
  });
});
