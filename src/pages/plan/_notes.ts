import type { Line } from '../../../schemas/inline.ts';
import type { Manoeuvre } from '../../../schemas/manoeuvre.ts';
import type { EntryNotes } from '../../components/run-sheet-words.ts';
import { htmlText } from '../../text/html.ts';
import { address, library } from '../_data.ts';

/** Lines of prose as HTML. */
export const linesOf = (lines: readonly Line[]): string[] => lines.map((line) => htmlText(line, library, address));

/** What a run sheet says at a manoeuvre's first step: its cautions, and the findings that ask to stop and act. */
export function notesOf({ cautions, redFlags }: Pick<Manoeuvre, 'cautions' | 'redFlags'>): EntryNotes {
  const urgent = redFlags.filter(({ urgency }) => urgency === 'now');
  return { cautions: linesOf(cautions), now: linesOf(urgent.map(({ finding }) => finding)) };
}
