import { describe, expect, it } from 'vitest';
import { formPdf } from '../../../src/forms/pdf.ts';
import { FormFieldError } from '../../../src/pdf/form/field-spec.ts';
import { TypesettingError } from '../../../src/pdf/typesetting-error.ts';
import { paperForm, withField, withItem } from './pdf-form.ts';

const form = paperForm();

describe('what cannot be set', () => {
  const long = 'Pneumonoultramicroscopicsilicovolcanoconiosis';

  it('is a word wider than its column, by manoeuvre and record', async () => {
    const wide = withField(form, (field) => ({ ...field, base: `Signs of ${long}` }));
    await expect(formPdf(wide, 'a4')).rejects.toThrow(TypesettingError);
    await expect(formPdf(wide, 'a4')).rejects.toThrow(
      new RegExp(`look, Signs of ${long}: the word “${long}” is [\\d.]+ mm wider than its column; shorten it`),
    );
  });

  it('is a title or an answer of the same kind', async () => {
    const titled = withItem(form, (item) => ({ ...item, title: long + long }));
    await expect(formPdf(titled, 'letter')).rejects.toThrow(/mm wider than its column/);
    const option = { code: 'long', display: long + long + long, normal: false };
    const answered = withField(form, ({ linkId, label, base, side, record, manoeuvre }) => ({
      ...{
        kind: 'choice',
        linkId,
        label,
        base,
        side,
        record,
        manoeuvre,
        options: [option, { ...option, code: 'b', display: 'b' }],
      },
    }));
    await expect(formPdf(answered, 'a4')).rejects.toThrow(/mm wider than its column/);
  });

  it('is an item taller than a page', async () => {
    const tall = withItem(form, (item) => ({
      ...item,
      cautions: [`${'Gently, and never in haste, '.repeat(400)}please.`],
    }));
    await expect(formPdf(tall, 'a4')).rejects.toThrow(
      /look: the item is \d+ mm taller than a page; shorten its words or ask for less/,
    );
  });

  it('is a field under the name of another, or under a malformed one', async () => {
    const taken = withField(form, (field) => ({ ...field, linkId: 'sheet.name' }));
    await expect(formPdf(taken, 'a4')).rejects.toThrow(FormFieldError);
    await expect(formPdf(taken, 'a4')).rejects.toThrow('field name "sheet_name" is used twice; each name once');
    const malformed = withField(form, (field) => ({ ...field, linkId: 'höhe' }));
    await expect(formPdf(malformed, 'a4')).rejects.toThrow('field name "höhe" has a character outside');
  });

  it('is a position without a mark', async () => {
    const floating = withItem(form, (item) => ({ ...item, positions: ['floating'] }));
    await expect(formPdf(floating, 'a4')).rejects.toThrow('no mark is drawn for position "floating"');
  });
});
