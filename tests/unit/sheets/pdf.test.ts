import { describe, expect, it } from 'vitest';
import type { Library } from '../../../schemas/library.ts';
import type { Manoeuvre } from '../../../schemas/manoeuvre.ts';
import { sheetPapers, type SheetPaper } from '../../../src/sheets/papers.ts';
import { sheetPdf } from '../../../src/sheets/pdf.ts';
import { runSheet } from '../../../src/sheets/sheet.ts';
import { fixtureLibrary, fixtureManoeuvre } from '../../fixtures/library.ts';
import { bare, roles } from '../../fixtures/pdf-text.ts';
import { fontLines, told } from '../../fixtures/pdf-tools.ts';
import { sheetText } from '../../fixtures/run-sheet-text.ts';
import { libraryWith } from '../cards/library-with.ts';

const papers = Object.keys(sheetPapers) as SheetPaper[];
const sheet = runSheet(fixtureLibrary, 'whole');

const withLook = (changes: Partial<Manoeuvre>): Library =>
  libraryWith([{ ...fixtureManoeuvre('wrist-look'), ...changes }]);
const long = (sentences: number): Manoeuvre['cautions'] => [
  [{ type: 'text', text: 'Do not lift a broken arm. '.repeat(sentences).trim() }],
];

describe.each(papers)('the sheet on %s', (paper) => {
  const bytes = sheetPdf(sheet, paper);

  it('is a sound tagged file with every font embedded', () => {
    expect(told('qpdf', bytes, '--check')).toContain('No syntax or stream encoding errors');
    expect(told('pdfinfo', bytes)).toMatch(/Tagged:\s+yes/);
    for (const font of fontLines(bytes)) expect(font).toMatch(/ yes +yes +yes +\d/);
  });

  it('has one title, a head for each position, and each step as a head below', async () => {
    const found = await roles(bytes, 1);
    expect(found.filter((role) => role === 'H1')).toHaveLength(1);
    expect(found.filter((role) => role === 'H2').length).toBeGreaterThanOrEqual(2);
    expect(found.filter((role) => role === 'H3')).toHaveLength(5);
  });

  it('has the same bytes again, whatever was set between', () => {
    sheetPdf(runSheet(withLook({ title: 'Look elsewhere' }), 'whole'), paper);
    expect(Buffer.compare(sheetPdf(runSheet(fixtureLibrary, 'whole'), paper), bytes)).toBe(0);
  });

  it('goes on over as many pages as it takes, the position at the edge of each', async () => {
    const many = libraryWith(
      Array.from({ length: 40 }, (_, index) => ({
        ...fixtureManoeuvre('wrist-look'),
        id: `look-${index}`,
        cautions: long(6),
      })),
    );
    const text = await sheetText(sheetPdf(runSheet(many, 'whole'), paper), paper);
    expect(text.sizes.length).toBeGreaterThan(1);
    expect(text.body.split(bare('Do not lift a broken arm.'))).toHaveLength(40 * 6 + 1);
    for (const edge of text.edges) expect(edge).toContain('Sitting');
    expect(text.astray).toEqual([]);
  });

  it('refuses a step that is taller than a page, by name', () => {
    const tall = runSheet(withLook({ cautions: long(400) }), 'whole');
    expect(() => sheetPdf(tall, paper)).toThrow(/wrist-look: is \d+ mm taller than a page; shorten its words/);
  });

  it('refuses a title with a word wider than its column, by name', () => {
    const wide = runSheet(withLook({ title: `Look ${'verylong'.repeat(12)}` }), 'whole');
    expect(() => sheetPdf(wide, paper)).toThrow(/wrist-look: the word “verylong.*” is wider than its column/);
  });
});

it('says on A4 and Letter what to do at a finding, and in the pocket refers to where it says so', async () => {
  const [a4, letter, a6] = await Promise.all(
    papers.map(async (paper) => (await sheetText(sheetPdf(sheet, paper), paper)).body),
  );
  const action = bare('A pale cold hand → Loosen anything tight and call for help.');
  expect(a4).toContain(action);
  expect(letter).toContain(action);
  expect(a6).toContain(bare('A pale cold hand.'));
  expect(a6).toContain(bare('what to do at each finding is on the full sheet and the cards'));
});

it('lists the signs that must not be missed before the first step, in every size', async () => {
  for (const paper of papers) {
    const missed = { ...sheet, mustNotMiss: ['A wrist that is cold', 'A wrist that is white'] };
    const { body } = await sheetText(sheetPdf(missed, paper), paper);
    for (const sign of missed.mustNotMiss) {
      expect(body).toContain(bare(sign));
      expect(body.indexOf(bare(sign))).toBeLessThan(body.indexOf(bare('Clean your hands')));
    }
  }
});
