import { describe, expect, it } from 'vitest';
import type { Form } from '../../../schemas/form.ts';
import { formText } from '../../../src/forms/plain/text.ts';
import { wrapped, wrappedPieces } from '../../../src/forms/plain/wrap.ts';
import { paperForm } from './pdf-form.ts';

const form = paperForm();
const text = formText(form);
const spaced = (words: string): string => words.replaceAll(/\s+/g, ' ');
const flat = spaced(text);

describe('the plain text of a form', () => {
  it('has lines of at most 80 characters, none that ends in a space, no tab, no line drawn with signs', () => {
    for (const line of text.split('\n')) {
      expect(line.length, line).toBeLessThanOrEqual(80);
      expect(line).toBe(line.trimEnd());
    }
    expect(text).not.toMatch(/\t|[_=*#~]{2,}|-{3,}|[\u2500-\u257f]/);
    expect(text.endsWith('.\n')).toBe(true);
  });

  it('says which form, which version and code, first and last', () => {
    const edition = `fixture-form 0.1.0, draft`;
    const code = form.hash.slice(0, 8);
    expect(text.startsWith('FIXTURE EXAMINATION\n')).toBe(true);
    expect(flat).toContain(`Form ${edition}, ${form.date}, code ${code}.`);
    expect(text.trimEnd().split('\n').at(-1)).toBe(`End of form ${edition}, code ${code}.`);
    expect(flat).toContain(form.url);
    expect(flat).toContain(form.hash);
  });

  it('says every caution and red flag in full at its item, before what the item asks', () => {
    for (const { title, cautions, redFlags, fields } of form.sections.flatMap(({ items }) => items)) {
      const own = flat.slice(flat.search(new RegExp(`(?:Item \\d+\\. |[A-Z] )${title} Position:`)));
      const [asked] = fields;
      const before = asked === undefined ? own : own.slice(0, own.indexOf(` ${asked.label} `));
      for (const caution of cautions) expect(before, title).toContain(`Caution: ${spaced(caution)}`);
      for (const { finding, action } of redFlags) {
        expect(before).toContain(`: ${finding}`);
        expect(before).toContain(action);
      }
    }
  });

  it('leaves nothing filled in', () => {
    expect(text).not.toMatch(/\[[^ \]]\]/);
    for (const line of text.split('\n').filter((each) => /(?:In words|if abnormal|from \S+ to \S+):/.test(each)))
      expect(line.endsWith(':')).toBe(true);
  });

  it('says who signed a release, and that a withdrawn one is not to be used', () => {
    const signOff = { author: 'A', reviewer: 'B', approver: 'C', approved: '2026-12-01', reviewDue: '2027-12-01' };
    const released: Form = { ...form, status: 'active', signOff };
    expect(formText(released)).toContain(
      'Written by A, reviewed by B, approved by C on 2026-12-01. Review due 2027-12-01.',
    );
    const withdrawal = { withdrawn: '2027-01-01', by: 'C', reason: 'Wrong.' };
    expect(formText({ ...released, status: 'retired', withdrawal }).replaceAll(/\s+/g, ' ')).toContain(
      'Withdrawn on 2027-01-01 by C: Wrong. Do not use it. Nothing replaces it.',
    );
  });
});

describe('wrapping', () => {
  it('breaks between words, never within, and indents what goes on', () => {
    const words = (count: number): string => Array.from({ length: count }, () => 'word').join(' ');
    expect(wrapped(words(38), '- ', 2)).toEqual([`- ${words(15)}`, `  ${words(15)}`, `  ${words(8)}`]);
  });

  it('keeps a piece whole, even one longer than a line', () => {
    expect(wrappedPieces(['a b', 'x'.repeat(90), 'c'], '  ', { first: '  ' })).toEqual([
      '  a b',
      `  ${'x'.repeat(90)}`,
      '  c',
    ]);
  });
});
