import { describe, expect, test } from 'vitest';
import { buildForm } from '../../src/forms/form.ts';
import { formPdf } from '../../src/forms/pdf.ts';
import { requireLibrary } from '../../src/library/load.ts';
import { atItem, type FormText, formText, inAnnex, numberedItems } from '../fixtures/form-safety.ts';

const library = requireLibrary('content');
const sheets = library.forms.flatMap(({ id }) => (['a4', 'letter'] as const).map((paper) => [id, paper] as const));

describe.each(sheets)('%s on %s', async (id, paper) => {
  const form = buildForm(library, id);
  const items = numberedItems(form);
  const text: FormText = await formText(await formPdf(form, paper));

  test('every item shows its first caution and every finding that cannot wait', () => {
    expect(items.length).toBeGreaterThan(0);
    for (const { item, number } of items)
      if (number !== undefined) expect.soft(text.form, item.title).toMatch(atItem(item, number));
  });

  test('the annex has every caution and every red flag in full, with what to do', () => {
    for (const { item, number } of items) expect.soft(text.annex, item.title).toMatch(inAnnex(item, number));
  });
});
