import type { Filled } from './filled.ts';
import { fieldsOf, type FormSlice } from './form-slice.ts';
import { foundWords, notExaminedWords } from './note-words.ts';
import { type RecordFields, recordsOf } from './records.ts';

type Section = FormSlice['sections'][number];
type Item = Section['items'][number];

/**
 * The note of a filled form as plain text: what was examined, in the form's order, then what was marked as not examined.
 * What was left blank is not named and never counts as normal. Empty when nothing was answered.
 * Throws RangeError for a code that the form does not offer.
 */
export function noteOf(form: FormSlice, filled: Filled): string {
  const found = form.sections.flatMap((section) => sectionLines(section, filled));
  const missed = fieldsOf(form).flatMap((field) => notExaminedWords(field, filled) ?? []);
  if (found.length === 0 && missed.length === 0) return '';
  const notExamined = missed.length === 0 ? [] : ['', 'Not examined', ...missed.map((words) => `  ${words}`)];
  return [headLine(form), ...found, ...notExamined, '', limits, ''].join('\n');
}

const statusWords = { draft: ' (draft)', active: '', retired: ' (withdrawn)' } as const;

const limits =
  'ABNORMAL marks only what was asked as normal or abnormal: read every line. What is not named here was not recorded; it does not count as normal.';

function headLine({ title, id, version, status, hash }: FormSlice): string {
  return `${title}. Form ${id} ${version}${statusWords[status]}, code ${hash.slice(0, 8)}.`;
}

function sectionLines({ title, items }: Section, filled: Filled): string[] {
  const lines = items.flatMap((item) => itemLines(item, filled));
  return lines.length === 0 ? [] : ['', title, ...lines];
}

function itemLines({ title, fields }: Item, filled: Filled): string[] {
  const lines = recordsOf({ fields }).flatMap((record) => recordLines(record, filled));
  return lines.length === 0 ? [] : [`- ${title}`, ...lines.map((line) => `  ${line}`)];
}

/** One line for a field; one for both sides where both were found the same. */
function recordLines({ label, fields }: RecordFields, filled: Filled): string[] {
  const found = fields.map((field) => ({ field, words: foundWords(field, filled) }));
  const [first, second] = found;
  if (first?.words !== undefined && first.words === second?.words) return [`${label}, right and left: ${first.words}`];
  return found.flatMap(({ field, words }) => (words === undefined ? [] : [`${field.label}: ${words}`]));
}
