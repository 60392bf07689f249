import { describe, expect, it } from 'vitest';
import type { FormItem } from '../../../schemas/form.ts';
import { type Answer, answersOf, answersOfForm } from '../../../src/forms/answers.ts';
import { fieldName } from '../../../src/forms/paper/form-fields.ts';
import { sheetFields } from '../../../src/forms/paper/sheet-fields.ts';
import { formPdf } from '../../../src/forms/pdf.ts';
import { filled, values, type Widget, widgets } from '../../fixtures/pdf-fields.ts';
import { bare } from '../../fixtures/pdf-text.ts';
import { fontLines, told } from '../../fixtures/pdf-tools.ts';
import { present } from '../../fixtures/present.ts';
import { flattened, flatText, pageSizes, textRuns } from './pdf-runs.ts';
import { paperForm, repeated } from './pdf-form.ts';
import { formText } from '../../fixtures/form-safety.ts';

/** Long enough to end on the back of its third sheet or so, and to break items. */
const form = repeated(paperForm(), 4);
const answers = answersOfForm(form).map(({ answer }) => answer);
const printed = form.sections.map(({ items }) => items.filter(({ fields }) => fields.length > 0));
const items = printed.flat();
const millimetre = 72 / 25.4;
/** Rounding of coordinates in the file, in points. */
const rounding = 0.1;

/** Paper sizes in millimetres: ISO 216, and US Letter of ANSI/ASME Y14.1. */
const papers = [
  { paper: 'a4', width: 210, height: 297 },
  { paper: 'letter', width: 215.9, height: 279.4 },
] as const;

const typeOf = ({ type, field, linkId }: Answer): string => {
  if (type !== 'coded') return 'Tx';
  return field.kind === 'finding' && linkId === field.reason ? 'Ch' : 'Btn';
};

const codesOf = (places: readonly Widget[]): string[] =>
  places.flatMap(({ buttonValue, options }) => options?.map(({ exportValue }) => exportValue) ?? buttonValue ?? []);

describe.each(papers)('the form on $paper', async ({ paper, width, height }) => {
  const bytes = await formPdf(form, paper);
  const places = await widgets(bytes);
  const byName = Map.groupBy(places, ({ fieldName: name }) => name);
  const runs = await textRuns(bytes);
  const pages = await pageSizes(bytes);
  const placesOf = (linkId: string): Widget[] => byName.get(fieldName(linkId)) ?? [];
  const { formSides, annexSides } = await formText(bytes);
  const foot = 16.5 * millimetre;

  it('has every blank of the form once, and the blanks of every sheet, and no other', () => {
    const ofSheet = sheetFields.filter((spec) => !('optional' in spec) || byName.has(spec.name));
    const expected = [...ofSheet.map(({ name }) => name), ...answers.map(({ linkId }) => fieldName(linkId))];
    expect([...byName.keys()].sort()).toEqual(expected.sort());
    for (const { linkId, ...answer } of answers) {
      const boxes = answer.type === 'coded' && typeOf({ linkId, ...answer }) === 'Btn' ? answer.options.length : 1;
      expect(placesOf(linkId), linkId).toHaveLength(boxes);
    }
  });

  it('gives each blank its type, its answers and a tooltip with side and unit', () => {
    for (const answer of answers) {
      const boxes = placesOf(answer.linkId);
      expect(new Set(boxes.map(({ fieldType }) => fieldType)), answer.linkId).toEqual(new Set([typeOf(answer)]));
      if (answer.type === 'coded') expect(codesOf(boxes)).toEqual(answer.options.map(({ code }) => code));
      for (const { alternativeText } of boxes)
        expect(alternativeText.startsWith(answer.label), alternativeText).toBe(true);
      if (answer.type === 'number') expect(present(boxes[0]).alternativeText).toContain(`in ${answer.unitLabel}, from`);
    }
  });

  it('gives back every value that is filled in', async () => {
    const chosen = (answer: Answer): string =>
      answer.type === 'coded'
        ? present(answer.options.at(-1)).code
        : answer.type === 'number'
          ? String(answer.max)
          : `of ${answer.label}`;
    const wanted = new Map([
      ...answers.map((answer) => [fieldName(answer.linkId), chosen(answer)] as const),
      ...sheetFields.map(
        (spec) =>
          [
            spec.name,
            'options' in spec ? present(spec.options[0]).code : spec.kind === 'tick' ? 'Yes' : 'Ward 1',
          ] as const,
      ),
    ]);
    const saved = await filled(bytes, wanted);
    expect(await values(saved)).toEqual(new Map([...byName.keys()].map((name) => [name, wanted.get(name)])));
    expect(told('qpdf', saved, '--check')).toContain('No syntax or stream encoding errors');
  });

  it('is sound, tagged and titled, with every font embedded', () => {
    expect(told('qpdf', bytes, '--check')).toContain('No syntax or stream encoding errors');
    expect(told('pdfinfo', bytes)).toMatch(/Tagged:\s+yes/);
    expect(told('pdfinfo', bytes)).toContain(form.title);
    const fonts = fontLines(bytes);
    expect(fonts.length).toBeGreaterThanOrEqual(3);
    for (const line of fonts) expect(line).toMatch(/ yes +yes +yes +\d/);
  });

  it('stands on paper of its size, every word and blank inside, clear of what printers leave blank', () => {
    for (const size of pages) {
      expect(size.width).toBeCloseTo(width * millimetre, 0);
      expect(size.height).toBeCloseTo(height * millimetre, 0);
    }
    const clear = 4 * millimetre;
    const within = (x: number, y: number): boolean =>
      x >= clear && x <= width * millimetre - clear && y >= clear && y <= height * millimetre - clear;
    for (const { text, from, to } of runs) expect(within(from.x, from.y) && within(to.x, to.y), text).toBe(true);
    for (const { rect, fieldName: name } of places)
      expect(within(rect[0], rect[1]) && within(rect[2], rect[3]), name).toBe(true);
  });

  it('leaves the margin for holes on the bound side, which changes from page to page', () => {
    for (const page of pages.keys()) {
      const ends = runs.filter((run) => run.page === page + 1).flatMap(({ from, to }) => [from.x, to.x]);
      const bound = page % 2 === 0 ? Math.min(...ends) : width * millimetre - Math.max(...ends);
      expect(bound, `page ${page + 1}`).toBeGreaterThanOrEqual(17 * millimetre);
    }
  });

  it('sets labels, answers and titles in 9.5 pt at least, what to beware of in 8 pt, nothing below 7.5 pt', () => {
    const atLeast = (size: number): string =>
      bare(
        runs
          .filter((run) => run.size >= size)
          .map(({ text }) => text)
          .join(''),
      );
    const [large, readable] = [atLeast(9.5), atLeast(8)];
    for (const { label, field, ...answer } of answers) {
      expect(large, label).toContain(bare(field.base));
      const words = 'options' in field && field.kind !== 'scale' ? field.options.map(({ display }) => display) : [];
      for (const option of words) expect(large, option).toContain(bare(option));
      if (answer.type === 'coded' && field.kind === 'finding' && label === field.label)
        for (const option of answer.options) expect(large).toContain(bare(option.label.toLowerCase()));
    }
    for (const { title, cautions, redFlags } of items) {
      expect(large).toContain(bare(title));
      for (const words of [...cautions, ...redFlags.map(({ finding }) => finding.replace(/\.$/, ''))])
        expect(readable).toContain(bare(words));
    }
    expect(Math.min(...runs.map(({ size }) => size))).toBeGreaterThanOrEqual(7.5);
    const smallest = runs.filter(({ size, from }) => size < 8 && from.y > foot).map(({ text }) => text);
    expect(new Set(smallest.filter((text) => !form.copyright.includes(text)))).toEqual(new Set(['why not']));
  });

  it('gives a ballpoint 7 mm from line to line, and no line too short to write a word on', () => {
    const lines = places.filter(({ fieldType }) => fieldType !== 'Btn');
    for (const line of lines) {
      expect(line.rect[2] - line.rect[0], line.fieldName).toBeGreaterThanOrEqual(12 * millimetre);
      const above = lines.filter(
        (other) =>
          other.page === line.page &&
          other.rect[1] > line.rect[1] + 1 &&
          other.rect[0] < line.rect[2] &&
          other.rect[2] > line.rect[0],
      );
      for (const other of above)
        expect(other.rect[1] - line.rect[1], `${other.fieldName} over ${line.fieldName}`).toBeGreaterThanOrEqual(
          7 * millimetre - rounding,
        );
    }
  });

  it('lays no blank over another', () => {
    const apart = (a: Widget, b: Widget): boolean =>
      a.page !== b.page ||
      a.rect[2] <= b.rect[0] + 1 ||
      b.rect[2] <= a.rect[0] + 1 ||
      a.rect[3] <= b.rect[1] + 1 ||
      b.rect[3] <= a.rect[1] + 1;
    for (const [index, a] of places.entries())
      for (const b of places.slice(index + 1)) expect(apart(a, b), `${a.fieldName} and ${b.fieldName}`).toBe(true);
  });

  it('keeps the right in the first column and the left in the second, both in one place all down the page', () => {
    const bothSides = answers.filter(
      ({ linkId, field }) =>
        field.side === 'right' && linkId === field.linkId && placesOf(linkId.replace(/right$/, 'left')).length > 0,
    );
    expect(bothSides.length).toBeGreaterThan(3);
    const starts = new Map<number, number[]>([
      [0, []],
      [1, []],
    ]);
    for (const { linkId } of bothSides) {
      const [right, left] = [present(placesOf(linkId)[0]), present(placesOf(linkId.replace(/right$/, 'left'))[0])];
      expect([left.page, left.rect[1]], linkId).toEqual([right.page, right.rect[1]]);
      expect(left.rect[0] - right.rect[0]).toBeCloseTo((paper === 'a4' ? 63 : 65.5) * millimetre, 0);
      starts.get(right.page % 2)?.push(right.rect[0]);
    }
    // Odd and even sides have their margins exchanged; a box to tick is a little larger than it is drawn.
    for (const [parity, all] of starts) {
      expect(all.length, `parity ${parity}`).toBeGreaterThan(3);
      expect(Math.max(...all) - Math.min(...all)).toBeLessThan(millimetre);
    }
  });

  it('fits what is typed on one line, and keeps one size of type where there are several lines', () => {
    const sizes = new Map(places.map((each) => [each.fieldName, each.defaultAppearanceData?.fontSize]));
    expect(sizes.get('sheet_summary')).toBe(10);
    for (const answer of answers.filter(({ type }) => type === 'text'))
      expect(sizes.get(fieldName(answer.linkId))).toBe(0);
  });

  it('asks for two identifiers on every side that is filled in, and for none on the annex', () => {
    for (const page of pages.keys())
      for (const name of ['sheet_name', 'sheet_birth', 'sheet_number'])
        expect(
          byName.get(name)?.filter((each) => each.page === page + 1),
          `${name}, page ${page + 1}`,
        ).toHaveLength(page < formSides ? 1 : 0);
    expect(places.filter(({ page }) => page > formSides)).toEqual([]);
  });

  it('prints its edition, the safety words, the page number and a scale on every side', async () => {
    for (const page of pages.keys()) {
      const words = await flatText(bytes, page + 1);
      const ofAnnex = `annex, page ${page + 1 - formSides} of ${annexSides}`;
      expect(words).toContain(page < formSides ? `page ${page + 1} of ${formSides}` : ofAnnex);
      expect(words).toContain(`fixture-form 0.1.0, draft · 2026-11-25 · code ${form.hash.slice(0, 8)}`);
      expect(words).toContain(
        'For trained staff. Follow local protocol. Not a diagnosis. A filled form is a health record.',
      );
      expect(words).toContain('50 mm when printed at its true size');
    }
  });

  it('begins the annex on the front of a sheet', () => {
    expect(annexSides).toBeGreaterThan(0);
    expect(formSides % 2).toBe(0);
  });

  it('breaks an item between its records only, and keeps a title and a heading with what follows', () => {
    const pageOf = (words: string): number | undefined =>
      runs.find(({ text, size }) => size > 9 && flattened(text) === words)?.page;
    const first = ({ fields }: FormItem): number => present(placesOf(present(fields[0]).linkId)[0]).page;
    for (const item of items) {
      expect(first(item), item.title).toBe(pageOf(item.title));
      for (const sides of Map.groupBy(item.fields, ({ record, base }) => `${record} ${base}`).values()) {
        const row = sides.flatMap(answersOf).flatMap(({ linkId }) => placesOf(linkId));
        expect(new Set(row.map(({ page }) => page)).size, present(sides[0]).label).toBe(1);
      }
    }
    for (const [index, section] of form.sections.entries())
      if (printed[index]?.[0]) expect(pageOf(section.title), section.title).toBe(pageOf(printed[index][0].title));
  });

  it('says at the head of a side which item goes on there, with its number', () => {
    const pagesOf = ({ fields }: FormItem): number[] =>
      fields.flatMap(answersOf).flatMap(({ linkId }) => placesOf(linkId).map(({ page }) => page));
    const broken = items.filter((item) => new Set(pagesOf(item)).size > 1);
    expect(broken.length).toBeGreaterThan(0);
    for (const item of broken) {
      const last = Math.max(...pagesOf(item));
      const head = runs.filter(({ page, from }) => page === last && from.y > (height - 21) * millimetre);
      expect(bare(head.map(({ text }) => text).join(''))).toContain(
        bare(`${items.indexOf(item) + 1}${item.title}, continued`),
      );
    }
  });

  it('fills its sides: none but the last ends with a third of it white', () => {
    for (const page of pages.slice(0, formSides - 1).keys()) {
      const words = runs.filter((run) => run.page === page + 1 && run.from.y > foot).map(({ from }) => from.y);
      const blanks = places.filter((place) => place.page === page + 1).map(({ rect }) => rect[1]);
      const lowest = Math.min(...words, ...blanks);
      expect(lowest, `page ${page + 1}`).toBeLessThan((height / 3) * millimetre);
    }
  });
});

describe('the thumb index', async () => {
  const one = present(items.at(-1));
  const positions = ['sitting', 'supine', 'supine', 'sitting'];
  const section = present(form.sections.at(-1));
  const moving = positions.map((position, index): FormItem => {
    const fields = one.fields.map((field) => ({ ...field, linkId: `${field.linkId}-${index}` }));
    return { ...one, manoeuvre: `feel-${index}`, positions: [position], fields };
  });
  const moved = { ...form, sections: [{ ...section, position: 'sitting', items: moving }] };
  const runs = await textRuns(await formPdf(moved, 'a4'));
  const turned = runs.filter(({ from, to }) => Math.abs(from.x - to.x) < 1 && Math.abs(from.y - to.y) > 1);

  it('names each run of one position once, from the top down, at the outer edge', () => {
    const first = turned.filter(({ page }) => page === 1).sort((a, b) => b.from.y - a.from.y);
    expect(first.map(({ text }) => text)).toEqual(['sitting', 'supine', 'sitting']);
    for (const { from } of first) expect(from.x).toBeGreaterThan((210 - 13) * millimetre);
  });

  it('says in words where an item moves the patient', () => {
    const level = runs.filter(({ from, to, size }) => Math.abs(from.y - to.y) < 1 && size > 9);
    expect(level.filter(({ text }) => ['sitting', 'supine'].includes(text)).map(({ text }) => text)).toEqual([
      ...['sitting', 'supine', 'sitting'],
    ]);
  });
});

describe('bytes', () => {
  it('are the same for the same form, whatever was set between', async () => {
    const first = await formPdf(form, 'a4');
    await formPdf(form, 'letter');
    expect(Buffer.compare(await formPdf(form, 'a4'), first)).toBe(0);
  });
});
