import type { Line } from '../../schemas/inline.ts';
import type { References } from './references.ts';
import { typstRuns, type TypstRun } from './typst.ts';

/** Straight quotation marks and apostrophes as they are printed: “so”, patient’s. `before` is the character that comes first. */
export function setQuotes(text: string, before = ' '): string {
  return text.replaceAll(/["']/g, (mark, place: number) => setMark(mark, text[place - 1] ?? before));
}

const opens = /[\s([/–]/;

function setMark(mark: string, before: string): string {
  if (mark === '"') return opens.test(before) ? '“' : '”';
  return opens.test(before) ? '‘' : '’';
}

/** A number stays on the line of its unit, and a range on one line. */
export function keepFigures(text: string): string {
  return text
    .replaceAll(/(\d) (?=(?:cm|mm|mmHg|cmH₂O|kg|m|min|s)\b|%)/g, '$1\u202f')
    .replaceAll(/(\d)–(?=\d)/g, '$1–\u2060');
}

/** A line as runs for the templates, set as a printer would set it. */
export function setRuns(line: Line, references: References): TypstRun[] {
  const runs = typstRuns(line, references);
  return runs.map((run, place) => ({ ...run, text: keepFigures(setQuotes(run.text, runs[place - 1]?.text.at(-1))) }));
}
