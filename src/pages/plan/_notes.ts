import type { Line } from '../../../schemas/inline.ts';
import type { Manoeuvre } from '../../../schemas/manoeuvre.ts';
import type { EntryNotes } from '../../components/run-sheet-words.ts';
import { htmlText } from '../../text/html.ts';
import { address, library } from '../_data.ts';

const lineOf = (line: Line): string => htmlText(line, library, address);

/** Lines of prose as HTML. */
export const linesOf = (lines: readonly Line[]): string[] => lines.map(lineOf);

/** A finding without a stop at its end. */
const opened = (html: string): string => html.replace(/\.$/, '');

/** What a run sheet says at a manoeuvre's first step: its cautions, and the findings that cannot wait with what to do. */
export function notesOf({ cautions, redFlags }: Pick<Manoeuvre, 'cautions' | 'redFlags'>): EntryNotes {
  const urgent = redFlags.filter(({ urgency }) => urgency === 'now');
  const now = urgent.map(({ finding, action }) => ({ finding: opened(lineOf(finding)), action: lineOf(action) }));
  return { cautions: linesOf(cautions), now };
}
