import { describe, expect, it } from 'vitest';
import { answersOfForm } from '../../../src/forms/answers.ts';
import { fieldName } from '../../../src/forms/paper/form-fields.ts';
import { sheetFields } from '../../../src/forms/paper/sheet-fields.ts';
import { formPdf } from '../../../src/forms/pdf.ts';
import { filled, values, type Widget, widgets } from '../../fixtures/pdf-fields.ts';
import { bare, bareText, pages } from '../../fixtures/pdf-text.ts';
import { fontLines, told } from '../../fixtures/pdf-tools.ts';
import { present } from '../../fixtures/present.ts';
import { byPdf } from '../../fixtures/told/by-pdf.ts';
import { expected } from '../../fixtures/told/told.ts';
import { paperForm, withField } from './pdf-form.ts';
import { pageSizes, textRuns } from './pdf-runs.ts';

const form = paperForm();
const answers = answersOfForm(form).map(({ answer }) => answer);
const bytes = await formPdf(form, 'large');
const places = await widgets(bytes);
const runs = await textRuns(bytes);
const sizes = await pageSizes(bytes);
const millimetre = 72 / 25.4;
/** A4 is 210 mm wide (ISO 216), Letter 279.4 mm high (ANSI/ASME Y14.1): a page of both fits either. */
const [width, height] = [210 * millimetre, 279.4 * millimetre];
/** Rounding of coordinates in the file, in points. */
const rounding = 0.1;
const closed = (words: string): string => words.replace(/\.$/, '');

/** Something to choose or to write in a field. */
function answerFor({ fieldType, checkBox, buttonValue, options, fieldName: name }: Widget): string {
  if (fieldType === 'Tx') return `of ${name}`;
  return fieldType === 'Ch' ? present(options?.at(-1)).exportValue : checkBox ? 'Yes' : present(buttonValue);
}

describe('the form in large print', () => {
  it('has every blank of the form and of every sheet once, and no other', () => {
    const wanted = [...sheetFields.map(({ name }) => name).filter((name) => name !== 'sheet_more')];
    wanted.push(...answers.map(({ linkId }) => fieldName(linkId)));
    expect([...new Set(places.map(({ fieldName: name }) => name))].sort()).toEqual(wanted.sort());
  });

  it('asks with the same label, side, unit, range and answers as the other formats', async () => {
    const keys = ['linkId', 'label', 'side', 'unitLabel', 'range', 'codes', 'words'] as const;
    const wanted = expected(form, keys).map(({ linkId, ...one }) => ({ name: fieldName(linkId), ...one }));
    const byName = (a: { name: string }, b: { name: string }): number => (a.name < b.name ? -1 : 1);
    expect((await byPdf(bytes)).sort(byName)).toEqual(wanted.sort(byName));
  });

  it('holds what is typed in every blank, as large as it is printed', async () => {
    const answered = new Map(places.map((place) => [place.fieldName, answerFor(place)]));
    expect(await values(await filled(bytes, answered))).toEqual(answered);
    const typed = places.filter(({ fieldType }) => fieldType === 'Tx');
    expect(new Set(typed.map(({ defaultAppearanceData }) => defaultAppearanceData?.fontSize))).toEqual(new Set([16]));
  });

  it('is set in 16 pt at least, in every word, the foot of the page too', () => {
    expect(runs.length).toBeGreaterThan(100);
    expect(Math.min(...runs.map(({ size }) => size))).toBeGreaterThanOrEqual(16);
  });

  it('stands on a page that A4 and Letter both hold, clear of what printers leave blank', () => {
    for (const size of sizes) {
      expect(size.width).toBeCloseTo(width, 0);
      expect(size.height).toBeCloseTo(height, 0);
    }
    const clear = 4 * millimetre;
    const within = (x: number, y: number): boolean =>
      x >= clear && x <= width - clear && y >= clear && y <= height - clear;
    for (const { text, from, to } of runs) expect(within(from.x, from.y) && within(to.x, to.y), text).toBe(true);
    for (const { rect, fieldName: name } of places)
      expect(within(rect[0], rect[1]) && within(rect[2], rect[3]), name).toBe(true);
  });

  it('leaves the margin for holes on the bound side, which changes from page to page', () => {
    for (const page of sizes.keys()) {
      const ends = runs.filter((run) => run.page === page + 1).flatMap(({ from, to }) => [from.x, to.x]);
      const bound = page % 2 === 0 ? Math.min(...ends) : width - Math.max(...ends);
      expect(bound, `page ${page + 1}`).toBeGreaterThanOrEqual(17 * millimetre);
    }
  });

  it('gives a hand 12 mm from line to line, and lays no blank over another', () => {
    for (const [index, a] of places.entries())
      for (const b of places.slice(index + 1).filter(({ page }) => page === a.page)) {
        const beside = a.rect[2] <= b.rect[0] + rounding || b.rect[2] <= a.rect[0] + rounding;
        const apart = a.rect[3] <= b.rect[1] + rounding || b.rect[3] <= a.rect[1] + rounding;
        expect(beside || apart, `${a.fieldName} and ${b.fieldName}`).toBe(true);
        if (beside || a.fieldType === 'Btn' || b.fieldType === 'Btn') continue;
        expect(Math.abs(a.rect[1] - b.rect[1]) + rounding, `${a.fieldName}, ${b.fieldName}`).toBeGreaterThanOrEqual(
          12 * millimetre,
        );
      }
  });

  it('asks for two identifiers on every side, and says on each which form it is', async () => {
    const texts = (await pages(bytes)).map(bareText);
    for (const page of sizes.keys()) {
      for (const name of ['sheet_name', 'sheet_birth'])
        expect(places.filter((place) => place.page === page + 1 && place.fieldName === name)).toHaveLength(1);
      expect(texts[page]).toContain(bare(`code ${form.hash.slice(0, 8)}`));
      expect(texts[page]).toContain(bare(`page ${page + 1} of ${sizes.length}`));
    }
  });

  it('says every caution and every red flag with what to do, all of an item before its first blank', () => {
    const text = bare(runs.map((run) => run.text).join(''));
    const items = form.sections.flatMap((section) => section.items);
    expect(items.some(({ cautions, redFlags }) => cautions.length > 0 && redFlags.length > 0)).toBe(true);
    for (const item of items) {
      const start = text.indexOf(bare(item.title));
      expect(start, item.title).toBeGreaterThanOrEqual(0);
      const first = item.fields[0];
      const end = first === undefined ? text.length : text.indexOf(bare(first.base), start + bare(item.title).length);
      for (const words of [...item.cautions, ...item.redFlags.flatMap(({ finding, action }) => [finding, action])])
        expect(text.slice(start, end), words).toContain(bare(closed(words)));
    }
  });

  it('is sound, tagged and titled, with every font embedded, and the same bytes each time', async () => {
    expect(told('qpdf', bytes, '--check')).toContain('No syntax or stream encoding errors');
    expect(told('pdfinfo', bytes)).toMatch(/Tagged:\s+yes/);
    expect(told('pdfinfo', bytes)).toContain(form.title);
    for (const line of fontLines(bytes)) expect(line).toMatch(/ yes +yes +yes +\d/);
    await formPdf(form, 'a4');
    expect(Buffer.compare(await formPdf(form, 'large'), bytes)).toBe(0);
  });

  it('refuses a word that is wider than its column, by manoeuvre', async () => {
    const word = 'Pneumonoultramicroscopicsilicovolcanoconiosis'.repeat(2);
    const wide = withField(form, (field) => ({ ...field, base: `Signs of ${word}` }));
    await expect(formPdf(wide, 'large')).rejects.toThrow(/look: the word “Pneumono\w+” is [\d.]+ mm wider/);
  });
});
