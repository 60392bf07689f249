import { describe, expect, it } from 'vitest';
import { formPdf } from '../../../src/forms/pdf.ts';
import { widgets } from '../../fixtures/pdf-fields.ts';
import { bare } from '../../fixtures/pdf-text.ts';
import { present } from '../../fixtures/present.ts';
import { paperForm, repeated } from './pdf-form.ts';
import { flatText } from './pdf-runs.ts';
import { annexTitle, atItem, formText, inAnnex, numberedItems } from '../../fixtures/form-safety.ts';

const form = paperForm();
const bytes = await formPdf(form, 'a4');
const text = await formText(bytes);
const said = await flatText(bytes);
const all = numberedItems(form);

describe('at each item', () => {
  it.each(all.filter(({ number }) => number !== undefined))(
    '$number $item.title: the first caution, and every finding that cannot wait',
    ({ item, number }) => expect(text.form).toMatch(atItem(item, number ?? 0)),
  );

  it('says that a sensitive one needs consent', () => {
    expect(all.some(({ item }) => item.sensitive)).toBe(true);
    expect(said).toContain(
      'Sensitive: only where indicated, trained and permitted; explicit consent; chaperone offered; right to stop.',
    );
  });

  it('says where all cautions and what to do are to be found', () => {
    expect(said).toContain('All cautions, all red flags and what to do stand in the annex under the item’s number');
    expect(said.split('all cautions, red flags and what to do are in the annex, by number')).toHaveLength(
      text.formSides + 1,
    );
  });
});

describe('the first side', () => {
  it('names the signs that must not be missed, most dangerous first', () =>
    expect(said).toMatch(/Must not be missed:\s+A pulseless hand\s•\sA silent chest\./));
});

describe('the annex', () => {
  it.each(all)('has every caution and red flag of $item.title in full, with what to do', ({ item, number }) =>
    expect(text.annex).toMatch(inAnnex(item, number)),
  );

  it('keeps the order of the form', () => {
    const places = all.map(({ item, number }) => text.annex.search(inAnnex(item, number)));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
  });

  it('leaves out what has nothing to beware of', async () => {
    const careless = structuredClone(form);
    for (const { items } of careless.sections)
      for (const item of items) Object.assign(item, { cautions: [], redFlags: [], sensitive: false });
    const words = await flatText(await formPdf(careless, 'a4'));
    expect(words).not.toContain(annexTitle);
    expect(words).not.toContain('annex');
  });
});

describe('what is done before and after, and asks for nothing', () => {
  const greet = present(form.sections[0]?.items[0]);

  it('is no item of the form', () => {
    expect(greet.fields).toEqual([]);
    expect(text.form).not.toContain(bare(greet.title));
    expect(text.form).not.toContain(bare(present(form.sections[0]).title));
  });

  it('has its findings that cannot wait where the sheet says to stop and treat first', () => {
    expect(said).toContain('Unwell? Stop and treat first by local protocol. Now: No answer to a greeting.');
  });

  it('is an item all the same where it belongs to the examination', async () => {
    const asking = structuredClone(form);
    const look = present(asking.sections[1]?.items[0]);
    look.fields = [];
    const { form: words } = await formText(await formPdf(asking, 'a4'));
    expect(words).toMatch(atItem(look, 1));
  });
});

describe('how it is filled in', () => {
  it('says that the right comes first, and what an empty box means', () => {
    expect(said).toContain('The patient’s right is always the first column');
    expect(said).toContain('it is not a normal finding');
  });

  it('spells out each grade of a scale once in its section, with its source', () => {
    expect(said.split('0 – nothing; 4+ – nearly all; 5 – all')).toHaveLength(2);
    expect(said).toContain('On fixtures. 2020; table 2');
  });

  it('has the words for normal and the unit beside a number', () => {
    expect(said).toContain('normal: at most 3 cm');
    expect(said).toMatch(/R cm L cm/);
  });
});

describe('the back of the last sheet', async () => {
  const lengths = await Promise.all([0, 1, 2, 3].map((times) => formPdf(repeated(form, times), 'a4')));
  const backs = await Promise.all(
    lengths.map(async (long) => {
      const { form: words, formSides } = await formText(long);
      const places = (await widgets(long)).filter(({ fieldName }) => fieldName === 'sheet_more');
      return { formSides, titled: words.includes(bare('More room')), pages: places.map(({ page }) => page) };
    }),
  );

  it('has room to go on where it would be blank, and only there', () => {
    expect(new Set(backs.map(({ titled }) => titled))).toEqual(new Set([true, false]));
    for (const { formSides, titled, pages } of backs) {
      expect(formSides % 2).toBe(0);
      expect(pages).toEqual(titled ? [formSides] : []);
    }
  });
});
