import type { Line } from '../../schemas/inline.ts';
import type { References } from '../text/references.ts';
import { typstRuns, type TypstRun } from '../text/typst.ts';

/** Straight quotation marks and apostrophes as they are printed: “so”, patient’s. `before` is the character that comes first. */
export function setQuotes(text: string, before = ' '): string {
  return text.replaceAll(/["']/g, (mark, place: number) => setMark(mark, text[place - 1] ?? before));
}

const opens = /[\s([/–]/;

function setMark(mark: string, before: string): string {
  if (mark === '"') return opens.test(before) ? '“' : '”';
  if (mark === "'") return opens.test(before) ? '‘' : '’';
  return mark;
}

/** A line as runs for the templates, with printed quotation marks. */
export function setRuns(line: Line, references: References): TypstRun[] {
  const runs = typstRuns(line, references);
  return runs.map((run, place) => ({ ...run, text: setQuotes(run.text, runs[place - 1]?.text.at(-1)) }));
}
