/** Every stock exam as a printed run sheet. Sizes: ISO 216 (A4, A6), US Letter of ANSI/ASME Y14.1. */
import { describe, expect, test } from 'vitest';
import { requireLibrary } from '../../src/library/load.ts';
import { blocksOf } from '../../src/plan/blocks.ts';
import { planRequest } from '../../src/plan/plan.ts';
import { stockRequest } from '../../src/plan/stock-request.ts';
import type { SheetPaper } from '../../src/sheets/papers.ts';
import { sheetPdf } from '../../src/sheets/pdf.ts';
import { runSheet } from '../../src/sheets/sheet.ts';
import { sensitiveWords } from '../../src/sheets/steps.ts';
import { bare } from '../fixtures/pdf-text.ts';
import { told } from '../fixtures/pdf-tools.ts';
import { manoeuvreOf, safetyWords, sheetText, stepTexts } from '../fixtures/run-sheet-text.ts';

const library = requireLibrary('content');

/** Millimetres, and how many sides the longest screening examination may take. */
const papers = {
  a4: { width: 210, height: 297, screening: 8 },
  letter: { width: 215.9, height: 279.4, screening: 9 },
  a6: { width: 105, height: 148, screening: 18 },
} satisfies Record<SheetPaper, object>;

const labelOf = (entries: readonly { id: string; label: string }[], id: string): string =>
  bare(entries.find((entry) => entry.id === id)?.label ?? '');

describe.each(library.forms.map(({ id, ...form }) => ({ id, form })))('$id', ({ id, form }) => {
  const sheet = runSheet(library, id);
  const plan = planRequest(library, stockRequest({ ...form, id }), { milliseconds: Infinity });

  describe.each(Object.entries(papers) as [SheetPaper, (typeof papers)[SheetPaper]][])('on %s', async (paper, size) => {
    const bytes = sheetPdf(sheet, paper);
    const text = await sheetText(bytes, paper);
    const steps = stepTexts(text.body, plan.steps, library, paper);

    test('is tagged, has its title, and every page its size', () => {
      const info = told('pdfinfo', bytes);
      expect(info).toMatch(/Tagged:\s+yes/);
      expect(bare(/Title:\s+(.*)/.exec(info)?.[1] ?? '')).toBe(bare(`${form.title}: run sheet`));
      for (const { width, height } of text.sizes) {
        expect(width).toBeCloseTo(size.width, 1);
        expect(height).toBeCloseTo(size.height, 1);
      }
    });

    test('says at the foot of every page what it is, its version and code, and page n of N; nothing runs over', () => {
      const edition = `${id} ${form.version}, library ${library.version} · code ${sheet.code}`;
      const safety = 'For trained staff. Follow local protocol. Not a diagnosis.';
      expect(sheet.code).toMatch(/^[0-9a-f]{8}$/);
      const expected = text.sizes.map((_, index) => {
        const page = `page ${index + 1} of ${text.sizes.length}`;
        return bare(paper === 'a6' ? safety + page + edition : `${safety}${form.title} · ${edition} · ${page}`);
      });
      expect(text.feet).toEqual(expected);
      expect(text.astray).toEqual([]);
    });

    test('opens with the warning and the preparation, and closes with the end of every examination', () => {
      const before = text.body.slice(0, text.body.indexOf(steps[0] ?? ''));
      expect(before).toContain(bare('Unwell? Stop and treat first.'));
      for (const sign of form.mustNotMiss) expect(before).toContain(bare(sign));
      for (const instrument of plan.layOut) expect(before).toContain(labelOf(library.instruments, instrument));
      // The pocket sheet is for use, not for comparing.
      expect(before.includes(bare(sheet.compared))).toBe(paper !== 'a6');
      expect(plan.steps[0]?.manoeuvre).toBe('unwell-first');
      expect(plan.steps.at(-1)?.manoeuvre).toBe('finish-and-explain');
      expect(text.body).toContain(bare(`Leaves out. ${form.leavesOut}`));
    });

    test('has at every step its first caution and each finding that cannot wait', () => {
      for (const [index, { manoeuvre, stage }] of plan.steps.entries()) {
        const step = steps[index] ?? '';
        if (stage > 1) expect(step).toContain(bare(`Caution and findings as at ${index + 2 - stage}.`));
        else for (const words of safetyWords(library, manoeuvre, paper)) expect.soft(step, manoeuvre).toContain(words);
        if (stage === 1 && manoeuvreOf(library, manoeuvre).sensitive) expect(step).toContain(bare(sensitiveWords));
      }
    });

    test('says at every change what to say and how to help, and uncovers and covers every region by name', () => {
      let number = 0;
      for (const block of blocksOf(plan)) {
        const position = library.positions.find((one) => one.id === block.position);
        const head = text.body.indexOf(bare(`“${position?.say}”`));
        expect(head, block.position).toBeGreaterThan(0);
        expect(text.body).toContain(bare(`Help. ${position?.help}`));
        for (const { uncover, cover } of block.steps) {
          const step = steps[number] ?? '';
          for (const region of uncover)
            expect(step.toLowerCase()).toContain(labelOf(library.exposures, region).toLowerCase());
          const covered = number > 0 && block.steps[0]?.cover === cover ? (steps[number - 1] ?? '') : step;
          for (const region of cover)
            expect(covered.toLowerCase()).toContain(labelOf(library.exposures, region).toLowerCase());
          number += 1;
        }
      }
      expect(number).toBe(plan.steps.length);
    });

    test('names the position at the outer edge, from where its block begins on every page', () => {
      const pageOf = (words: string) => text.bodies.findIndex((body) => body.includes(bare(words)));
      const first = text.bodies.findIndex((body) => body.includes((steps[0] ?? '').slice(0, 20)));
      expect(first).toBeGreaterThanOrEqual(0);
      for (const edge of text.edges.slice(first)) expect(edge).not.toBe('');
      for (const { position } of blocksOf(plan)) {
        const entry = library.positions.find(({ id: known }) => known === position);
        const page = pageOf(`“${entry?.say}”`);
        expect(text.edges[page], position).toContain(bare(entry?.label ?? ''));
      }
    });
  });
});

describe.each(Object.entries(papers) as [SheetPaper, (typeof papers)[SheetPaper]][])(
  'on %s',
  (paper, { screening }) => {
    test('the screening examination takes few enough sides', async () => {
      const { sizes } = await sheetText(sheetPdf(runSheet(library, 'adult-screening'), paper), paper);
      expect(sizes.length).toBeLessThanOrEqual(screening);
    });

    test('a sheet has the same bytes again, and no fault that qpdf finds', () => {
      const bytes = sheetPdf(runSheet(library, 'bed-bound'), paper);
      expect(Buffer.compare(sheetPdf(runSheet(library, 'bed-bound'), paper), bytes)).toBe(0);
      expect(told('qpdf', bytes, '--check')).toContain('No syntax or stream encoding errors');
    });
  },
);
