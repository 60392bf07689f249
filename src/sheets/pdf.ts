import { compilePdf } from '../pdf/engine.ts';
import type { SheetPaper } from './papers.ts';
import type { RunSheet } from './run-sheet.ts';

const templates = { a4: 'run-sheet.typ', letter: 'run-sheet.typ', a6: 'pocket-sheet.typ' } as const;

/**
 * A run sheet as tagged PDF/UA-1: the same sheet, the same bytes. A6 is the pocket version: without what to do at a
 * finding, and without how far to uncover.
 * Throws TypesettingError when it cannot be set: a step taller than a page, or a word wider than its column.
 */
export const sheetPdf = (sheet: RunSheet, paper: SheetPaper): Uint8Array<ArrayBuffer> =>
  compilePdf({ template: templates[paper], data: { ...sheet, paper } });
