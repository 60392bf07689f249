import { describe, expect, it } from 'vitest';
import type { FormItem } from '../../../schemas/form.ts';
import { type Answer, answersOf, answersOfForm } from '../../../src/forms/answers.ts';
import { fieldName } from '../../../src/forms/paper/form-fields.ts';
import { sheetFields } from '../../../src/forms/paper/sheet-fields.ts';
import { formPdf } from '../../../src/forms/pdf.ts';
import { FormFieldError } from '../../../src/pdf/form/field-spec.ts';
import { TypesettingError } from '../../../src/pdf/typesetting-error.ts';
import { filled, values, type Widget, widgets } from '../../fixtures/pdf-fields.ts';

import { fontLines, told } from '../../fixtures/pdf-tools.ts';
import { present } from '../../fixtures/present.ts';
import { library } from './fixtures.ts';
import { flattened, flatText, pageSizes, textRuns } from './pdf-runs.ts';
import { paperForm, withField, withItem } from './pdf-form.ts';

const form = paperForm();
const answers = answersOfForm(form).map(({ answer }) => answer);
const items = form.sections.flatMap((section) => section.items);
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
  const bytes = await formPdf(form, paper, library);
  const places = await widgets(bytes);
  const byName = Map.groupBy(places, ({ fieldName: name }) => name);
  const runs = await textRuns(bytes);
  const pages = await pageSizes(bytes);
  const placesOf = (linkId: string): Widget[] => byName.get(fieldName(linkId)) ?? [];

  it('has every blank of the form once, and the blanks of every sheet, and no other', () => {
    const expected = [...sheetFields.map(({ name }) => name), ...answers.map(({ linkId }) => fieldName(linkId))];
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

  it('sets nothing below 9.5 pt but furniture and small print, and that not below 7.5 pt', () => {
    const foot = 19 * millimetre;
    const smallPrint = [
      ...library.positions.map(({ label }) => label),
      ...items.flatMap(({ positions }) => positions),
      'then',
    ];
    const allowed = ({ text, from }: (typeof runs)[number]): boolean =>
      from.y < foot ||
      /accepted|to \d|^[−\d]/.test(text) ||
      form.copyright.includes(text) ||
      /Nobody N|table|2020/.test(text) ||
      smallPrint.some((words) => text.includes(words));
    for (const run of runs.filter(({ size }) => size < 9.5))
      expect(allowed(run), `${run.text} at ${run.size} pt`).toBe(true);
    expect(Math.min(...runs.map(({ size }) => size))).toBeGreaterThanOrEqual(7.5);
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
    const starts = new Set<string>();
    for (const { linkId } of bothSides) {
      const [right, left] = [present(placesOf(linkId)[0]), present(placesOf(linkId.replace(/right$/, 'left'))[0])];
      expect([left.page, left.rect[1]], linkId).toEqual([right.page, right.rect[1]]);
      expect(left.rect[0] - right.rect[0]).toBeCloseTo((paper === 'a4' ? 68 : 70) * millimetre, 0);
      starts.add(`${right.page % 2} ${Math.round(right.rect[0] / (2 * millimetre))}`);
    }
    expect(starts.size).toBeLessThanOrEqual(2);
  });

  it('asks for two identifiers and prints its edition, the safety words and the page number on every side', async () => {
    for (const page of pages.keys()) {
      for (const name of ['sheet_name', 'sheet_birth', 'sheet_number'])
        expect(
          byName.get(name)?.filter((each) => each.page === page + 1),
          `${name}, page ${page + 1}`,
        ).toHaveLength(1);
      const words = await flatText(bytes, page + 1);
      expect(words).toContain(`page ${page + 1} of ${pages.length}`);
      expect(words).toContain(`fixture-form 0.1.0, draft · 2026-11-25 · code ${form.hash.slice(0, 8)}`);
      expect(words).toContain(
        'For trained staff. Follow local protocol. Not a diagnosis. A filled form is a health record.',
      );
      expect(words).toContain('50 mm when printed at its true size');
    }
  });

  it('splits no item, and keeps a heading with what follows', () => {
    const pageOf = (words: string): number | undefined =>
      runs.find(({ text, size }) => size > 9 && flattened(text) === words)?.page;
    const pagesOf = (item: FormItem): number[] =>
      item.fields.flatMap(answersOf).flatMap(({ linkId }) => placesOf(linkId).map(({ page }) => page));
    for (const item of items) expect(new Set([pageOf(item.title), ...pagesOf(item)]).size, item.title).toBe(1);
    for (const section of form.sections)
      expect(pageOf(section.title), section.title).toBe(pageOf(present(section.items[0]).title));
  });
});

describe('what the form says', async () => {
  const said = await flatText(await formPdf(form, 'a4', library));

  it('has every caution and every red flag with its urgency, and what to do where it cannot wait', () => {
    for (const { cautions, redFlags, sensitive } of items) {
      for (const caution of cautions) expect(said).toContain(flattened(caution));
      for (const flag of redFlags) expect(said).toContain(flag.finding.replace(/\.$/, ''));
      for (const flag of redFlags.filter(({ urgency }) => urgency === 'now'))
        expect(said).toContain(`→ ${flag.action}`);
      if (sensitive) expect(said).toContain('explicit consent; chaperone offered; right to stop');
    }
    expect(said).toContain('Red flag, act now: It stops.');
    expect(said).toContain('Red flag, senior review the same day: It slows.');
    expect(said).toContain('Red flag, appointment soon by local protocol: It wanders.');
  });

  it('says first to stop and treat, that the right comes first, and what an empty box means', () => {
    expect(said).toContain('Unwell? Stop and treat first by local protocol.');
    expect(said).toContain('The patient’s right is always the first column');
    expect(said).toContain('it is not a normal finding');
  });

  it('spells out each grade of a scale once in its section, with its source', () => {
    expect(said.split('0 – nothing; 4+ – nearly all; 5 – all')).toHaveLength(2);
    expect(said).toContain('On fixtures. 2020; table 2');
  });

  it('has the words for normal, the unit and the accepted range beside a number', () => {
    expect(said).toContain('cm normal: at most 3 cm accepted: −5 to 20');
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
  const runs = await textRuns(await formPdf(moved, 'a4', library));
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
    const first = await formPdf(form, 'a4', library);
    await formPdf(form, 'letter', library);
    expect(Buffer.compare(await formPdf(form, 'a4', library), first)).toBe(0);
  });
});

describe('what cannot be set', () => {
  const long = 'Pneumonoultramicroscopicsilicovolcanoconiosis';

  it('is a word wider than its column, by manoeuvre and record', async () => {
    const wide = withField(form, (field) => ({ ...field, base: `Signs of ${long}` }));
    await expect(formPdf(wide, 'a4', library)).rejects.toThrow(TypesettingError);
    await expect(formPdf(wide, 'a4', library)).rejects.toThrow(
      new RegExp(`look-finding, Signs of ${long}: the word “${long}” is [\\d.]+ mm wider than its column; shorten it`),
    );
  });

  it('is a title or an answer of the same kind', async () => {
    const titled = withItem(form, (item) => ({ ...item, title: long + long }));
    await expect(formPdf(titled, 'letter', library)).rejects.toThrow(/mm wider than its column/);
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
    await expect(formPdf(answered, 'a4', library)).rejects.toThrow(/mm wider than its column/);
  });

  it('is an item taller than a page', async () => {
    const tall = withItem(form, (item) => ({
      ...item,
      cautions: Array.from({ length: 90 }, () => `${'Gently, and never in haste, '.repeat(4)}please.`),
    }));
    await expect(formPdf(tall, 'a4', library)).rejects.toThrow(
      /look-finding: the item is \d+ mm taller than a page; shorten its words or ask for less/,
    );
  });

  it('is a field under the name of another, or under a malformed one', async () => {
    const taken = withField(form, (field) => ({ ...field, linkId: 'sheet.name' }));
    await expect(formPdf(taken, 'a4', library)).rejects.toThrow(FormFieldError);
    await expect(formPdf(taken, 'a4', library)).rejects.toThrow(
      'field name "sheet_name" is used twice; each name once',
    );
    const malformed = withField(form, (field) => ({ ...field, linkId: 'höhe' }));
    await expect(formPdf(malformed, 'a4', library)).rejects.toThrow('field name "höhe" has a character outside');
  });

  it('is a position without a mark', async () => {
    const floating = withItem(form, (item) => ({ ...item, positions: ['floating'] }));
    await expect(formPdf(floating, 'a4', library)).rejects.toThrow('no mark is drawn for position "floating"');
  });
});
