import { describe, expect, it } from 'vitest';
import type { Form } from '../../../schemas/form.ts';
import { formDocx } from '../../../src/forms/docx/docx.ts';
import { sheetFields } from '../../../src/forms/paper/sheet-fields.ts';
import { present } from '../../fixtures/present.ts';
import { controlsOf, partsOf, wordsOf } from '../../fixtures/told/by-docx.ts';
import { elements, valueOf, xmlFaults } from '../../fixtures/told/xml.ts';
import { fieldsOf } from './fixtures.ts';
import { paperForm, withField } from './pdf-form.ts';

const form = paperForm();
const bytes = await formDocx(form);
const parts = partsOf(bytes);
const part = (path: string): string => present(parts.get(path));
const document = part('word/document.xml');
const paragraphs = elements(document, 'w:p');
const headings = (level: string): string[] =>
  paragraphs.filter((each) => valueOf(each, 'w:pStyle') === level).map(wordsOf);
const table = (holds: string): string => present(elements(document, 'w:tbl').find((each) => each.includes(holds)));

describe('the document', () => {
  it('is an archive of well-formed XML that names its main part first', () => {
    expect([...parts.keys()][0]).toBe('[Content_Types].xml');
    expect(part('[Content_Types].xml')).toContain('PartName="/word/document.xml"');
    for (const [path, xml] of parts) expect(xmlFaults(xml), path).toEqual([]);
  });

  it('is the same bytes for the same form, with the form’s date and none of the clock', async () => {
    expect(Buffer.compare(await formDocx(structuredClone(form)), bytes)).toBe(0);
    const dates = [...part('docProps/core.xml').matchAll(/\d{4}-\d\d-\d\dT[\d:.]+Z/g)].map(String);
    expect(dates).toEqual([`${form.date}T00:00:00Z`, `${form.date}T00:00:00Z`]);
  });

  it('is another for another form', async () => {
    const other = withField(form, (field) => ({ ...field, base: 'Asked otherwise', label: 'Asked otherwise' }));
    expect(Buffer.compare(await formDocx(other), bytes)).not.toBe(0);
  });

  it('says its title, its form and its language', () => {
    expect(part('docProps/core.xml')).toContain(`<dc:title>${form.title}</dc:title>`);
    expect(part('docProps/core.xml')).toContain(form.url);
    expect(part('docProps/core.xml')).toContain(form.hash);
    expect(part('word/styles.xml')).toContain('<w:lang w:val="en-GB"');
  });

  it('has a title, and a heading for each section and item, in the form’s order', () => {
    expect(headings('Title')).toEqual([form.title]);
    const asking = form.sections.filter(({ items }) => items.some(({ fields }) => fields.length > 0));
    const onForm = headings('Heading2').slice(0, headings('Heading2').indexOf('At the end'));
    expect(onForm).toEqual(['Head of the sheet', ...asking.map(({ title }) => title)]);
    const items = asking.flatMap((section) => section.items.map(({ title }) => title));
    expect(headings('Heading3').slice(0, items.length)).toEqual(items.map((title, index) => `${index + 1}. ${title}`));
  });
});

describe('its edges', () => {
  it('name form, version and short code, and ask once for the patient, on every page that is filled in', () => {
    const header = part('word/header1.xml');
    expect(wordsOf(header)).toContain(
      `${form.title}fixture-form 0.1.0, draft · ${form.date} · code ${form.hash.slice(0, 8)}`,
    );
    expect(controlsOf(header).map(({ tag }) => tag)).toEqual(['sheet_name', 'sheet_birth', 'sheet_number']);
    expect(wordsOf(part('word/header2.xml'))).toContain('No patient’s details on this page.');
    expect(controlsOf(part('word/header2.xml'))).toEqual([]);
  });

  it.each(['word/footer1.xml', 'word/footer2.xml'])('say the safety line and the page: %s', (path) => {
    expect(wordsOf(part(path))).toContain(
      'For trained staff. Follow local protocol. Not a diagnosis. A filled form is a health record.',
    );
    const codes = elements(part(path), 'w:instrText');
    expect(codes).toEqual(['PAGE', 'NUMPAGES']);
    expect(wordsOf(part(path))).toMatch(/Page +of$/);
  });
});

describe('its blanks', () => {
  const controls = [...controlsOf(part('word/header1.xml')), ...controlsOf(document)];

  it('are content controls, each tag and name once and no longer than a word processor takes', () => {
    const tags = controls.map(({ tag }) => tag);
    expect(new Set(tags).size).toBe(tags.length);
    for (const { tag, alias } of controls) {
      expect(tag.length).toBeLessThanOrEqual(64);
      expect(alias.length, tag).toBeLessThanOrEqual(64);
      expect(alias, tag).not.toBe('');
    }
  });

  it('are those of the form and of the sheet, and no others', () => {
    const fields = fieldsOf(form).flatMap((field) =>
      field.kind === 'finding' ? [field.linkId, field.detail, field.reason] : [field.linkId],
    );
    const own = sheetFields.filter((spec) => !('optional' in spec)).map(({ name }) => name);
    const found = new Set(controls.map(({ tag }) => tag.replace(/=.*/, '')));
    expect(found).toEqual(new Set([...fields, ...own]));
  });

  it('are empty: no box is ticked, no line written', () => {
    expect(document.match(/<w14:checked w14:val="0"\/>/g)).toHaveLength(
      controls.filter(({ kind }) => kind === 'box').length,
    );
    for (const control of elements(document, 'w:sdt')) {
      const shown = wordsOf(present(elements(control, 'w:sdtContent')[0]));
      expect(['', '☐']).toContain(shown);
    }
  });

  it('offer every reason for not examining', () => {
    const reasons = controls.filter(({ kind }) => kind === 'list');
    expect(reasons.length).toBeGreaterThan(0);
    for (const { options } of reasons)
      expect(options.map(({ words }) => words)).toEqual([
        ...['Declined', 'Unable', 'Not indicated', 'No time', 'Part absent'],
      ]);
  });

  it('refuse a linkId that is too long for a tag, by name', async () => {
    const long = withField(form, (field) => ({ ...field, linkId: 'x'.repeat(65) }));
    await expect(formDocx(long)).rejects.toThrow(/The tag "x+.*" has .* characters, 64 at most/);
  });
});

describe('a table', () => {
  const sided = table('quantity-both.right');

  it('names its columns on every page, in fixed widths, and breaks no row', () => {
    expect(sided).toContain('<w:tblLayout w:type="fixed"/>');
    const rows = elements(sided, 'w:tr');
    expect(rows[0]).toContain('<w:tblHeader/>');
    for (const row of rows) expect(row).toContain('<w:cantSplit/>');
    const cells = elements(present(rows[0]), 'w:tc').map(wordsOf);
    expect(cells).toEqual(['Asked', 'Patient’s right', 'Patient’s left']);
  });

  it('sets the right and the left of a record in one row, and leaves the place of a side that is not asked empty', () => {
    const row = (holds: string): string[] =>
      elements(present(elements(sided, 'w:tr').find((each) => each.includes(`"${holds}"`))), 'w:tc');
    expect(row('quantity-both.right').map((cell) => controlsOf(cell).map(({ tag }) => tag))).toEqual([
      [],
      ['quantity-both.right'],
      ['quantity-both.left'],
    ]);
    expect(row('quantity-left.left').map((cell) => controlsOf(cell).length)).toEqual([0, 0, 1]);
  });

  it('says unit, normal and accepted range beside a number, and what is normal beside a finding', () => {
    const row = present(elements(sided, 'w:tr').find((each) => each.includes('"quantity-none"')));
    const [asked, answer] = elements(row, 'w:tc').map(wordsOf);
    expect(asked).toMatch(/normal: at most 3.cm/);
    expect(asked).toContain('accepted: −5 to 20 cm');
    expect(answer).toMatch(/cm$/);
    expect(wordsOf(present(elements(sided, 'w:tr').find((each) => each.includes('"finding-none=N"'))))).toMatch(
      /^Fixture finding, asked nonenormal: Smooth, up to 3.cm/,
    );
  });

  it('sets a normal answer bold', () => {
    const runs = elements(sided, 'w:r')
      .filter((run) => run.includes('<w:b/>'))
      .map(wordsOf);
    expect(runs).toContain('seen');
    expect(runs).not.toContain('above the jaw');
  });
});

describe('its safety', () => {
  const words = paragraphs.map(wordsOf);
  const items = form.sections.flatMap((section) => section.items);

  it('stands at each item: consent, first caution, what cannot wait', () => {
    expect(words.some((each) => each.startsWith('Sensitive: only where indicated'))).toBe(true);
    expect(words).toContain('Caution: Gently.');
    expect(words).toContain('Red flag, act now: It stops.');
  });

  it('stands in full at the end, with what to do', () => {
    const annex = words.slice(words.findIndex((each) => each.startsWith('Cautions and red flags')));
    expect(annex.length).toBeGreaterThan(5);
    for (const { cautions, redFlags } of items) {
      for (const caution of cautions) expect(annex.join('\n')).toContain(caution);
      for (const { finding, action } of redFlags)
        expect(annex).toContain(`${finding.replace(/\.$/, '')}. → ${action.replace(/([^.])$/, '$1.')}`);
    }
  });

  it('says what a draft is, and what a withdrawn form is', async () => {
    const standing = (docx: Uint8Array): string | undefined =>
      elements(present(partsOf(docx).get('word/document.xml')), 'w:p')
        .map(wordsOf)
        .find((each) => each.startsWith('Standing.'));
    expect(standing(bytes)).toContain('Do not put it into use.');
    const withdrawal = { withdrawn: '2026-12-01', by: 'Editors', reason: 'A wrong figure', replacement: '2.0.0' };
    const withdrawn: Form = { ...form, status: 'retired', withdrawal };
    expect(standing(await formDocx(withdrawn))).toBe(
      'Standing. Withdrawn on 2026-12-01 by Editors: A wrong figure. Do not use it. Use version 2.0.0 in its place.',
    );
  });
});
