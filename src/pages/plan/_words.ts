import type { SheetEntry, SheetWords } from '../../components/run-sheet-words.ts';
import type { Manoeuvre } from '../../../schemas/manoeuvre.ts';
import { inPageOrder } from '../../plan/manoeuvres-of.ts';
import { address, library } from '../_data.ts';
import { linesOf, notesOf } from './_notes.ts';

const manoeuvres = new Map(inPageOrder(library).map((one) => [one.id, one]));

/** What the built pages of run sheets take their words from: the whole Library. */
export const words: SheetWords = {
  vocabulary: library,
  entry: (id) => entryOf(known(id)),
  unwellPage: manoeuvres.has('unwell-first') ? address({ kind: 'manoeuvre', id: 'unwell-first' }) : undefined,
  alternatives: (id) => linesOf(known(id).adaptations),
};

function known(id: string): Manoeuvre {
  const found = manoeuvres.get(id);
  if (found === undefined) throw new RangeError(`no manoeuvre has the id "${id}"`);
  return found;
}

function entryOf(manoeuvre: Manoeuvre): SheetEntry {
  const { id, title, sides, stages, sensitive } = manoeuvre;
  const page = address({ kind: 'manoeuvre', id });
  return { id, title, sides, stages: stages.length, sensitive, page, notes: notesOf(manoeuvre) };
}
