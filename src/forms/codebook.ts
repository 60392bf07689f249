// The package's own build for browsers: a form's files are made there too. It is the same code.
import { stringify } from 'csv-stringify/browser/esm/sync';
import type { Form } from '../../schemas/form.ts';
import { type Answer, answersOfForm } from './answers.ts';
import { normalWords } from './normal-words.ts';

/** Columns of the codebook, in order. */
export const codebookColumns = [
  'id',
  'section',
  'label',
  'kind',
  'unit',
  'min',
  'max',
  'options',
  'side',
  'code',
  'source',
  'normal',
  'unit_label',
  'code_name',
  'shown_when',
  'manoeuvre',
  'record',
  'form',
  'version',
  'hash',
  'copyright',
] as const;

type Row = { [Column in (typeof codebookColumns)[number]]: string };

/**
 * The form's fields as CSV (RFC 4180, UTF-8, a header row): one row for each linkId, in run-sheet order.
 * `options` is `code=label` joined by ` | `; `shown_when` is `linkId=code`; `unit` is UCUM; `code` is LOINC.
 */
export function codebook(form: Form): string {
  const rows = answersOfForm(form).map(({ section, answer }) => row(form, section.title, answer));
  return stringify(rows, { header: true, columns: [...codebookColumns], record_delimiter: 'windows' });
}

function row(form: Form, section: string, answer: Answer): Row {
  const { field, linkId, label, when } = answer;
  return {
    ...{
      id: linkId,
      section,
      label,
      kind: kind(answer),
      ...measure(answer),
      options: options(answer),
      side: field.side,
    },
    ...own(answer),
    shown_when: when === undefined ? '' : `${when.linkId}=${when.option.code}`,
    ...{ manoeuvre: field.manoeuvre, record: field.record },
    ...{ form: form.url, version: form.version, hash: form.hash, copyright: form.copyright },
  };
}

/** The field's own kind; the detail of a finding is text, its reason a choice. */
function kind({ part, field, type }: Answer): string {
  if (part === undefined) return field.kind;
  return type === 'text' ? 'text' : 'choice';
}

function measure(answer: Answer): Pick<Row, 'unit' | 'unit_label' | 'min' | 'max'> {
  if (answer.type !== 'number') return { unit: '', unit_label: '', min: '', max: '' };
  const { unit, unitLabel, min, max } = answer;
  return { unit, unit_label: unitLabel, min: String(min), max: String(max) };
}

function options(answer: Answer): string {
  return answer.type === 'coded' ? answer.options.map(({ code, label }) => `${code}=${label}`).join(' | ') : '';
}

/** What belongs to the field itself, not to its detail or reason. */
function own({ part, field }: Answer): Pick<Row, 'code' | 'code_name' | 'normal' | 'source'> {
  if (part !== undefined) return { code: '', code_name: '', normal: '', source: '' };
  const { code = '', codeDisplay = '', source = '' } = field;
  return { code, code_name: codeDisplay, normal: normalWords(field) ?? '', source };
}
