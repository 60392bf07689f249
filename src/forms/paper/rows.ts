import type { FormField, FormItem } from '../../../schemas/form.ts';
import { fieldAddress } from '../../pdf/form/field-address.ts';
import { findingOptions } from '../answer-options.ts';
import { recordsOf } from '../records.ts';
import { fieldName } from './form-fields.ts';
import { longWords } from './long-words.ts';

/** One box to tick: its address, its words, and whether it is normal. */
export interface Box {
  to: string;
  words: string;
  normal: boolean;
  /** Its words that could be wider than a column, if any. */
  long?: string[];
}

/** What is filled in for one side, or for a field without side. */
export type Cell =
  | { kind: 'finding'; boxes: Box[]; reason: string; detail: string }
  | { kind: 'boxes'; boxes: Box[] }
  | { kind: 'number'; to: string; unit: string }
  | { kind: 'words'; to: string };

/** One record as one row: what is asked on the left, then the patient's right and left, or one field across both. */
export interface Row {
  label: string;
  /** The words for normal. */
  normal?: string;
  /** Words that could be wider than their column. */
  long: { label: string[]; normal: string[] };
  right?: Cell;
  left?: Cell;
  whole?: Cell;
}

function boxes(name: string, options: readonly { words: string; normal: boolean }[]): Box[] {
  return options.map(({ words, normal }, index) => {
    const long = longWords(words);
    return { to: fieldAddress(name, index), words, normal, ...(long.length > 0 && { long }) };
  });
}

const findingWords = findingOptions.map(({ label }) => ({ words: label.toLowerCase(), normal: false }));

function optionWords(field: Extract<FormField, { options: unknown }>): { words: string; normal: boolean }[] {
  return field.options.map(({ code, display, normal }) => ({ words: field.kind === 'scale' ? code : display, normal }));
}

function cell(field: FormField): Cell {
  const name = fieldName(field.linkId);
  switch (field.kind) {
    case 'finding': {
      const lines = { reason: fieldAddress(fieldName(field.reason)), detail: fieldAddress(fieldName(field.detail)) };
      return { kind: 'finding', boxes: boxes(name, findingWords), ...lines };
    }
    case 'scale':
    case 'choice':
      return { kind: 'boxes', boxes: boxes(name, optionWords(field)) };
    case 'quantity':
      return { kind: 'number', to: fieldAddress(name), unit: field.unitLabel };
    case 'text':
      return { kind: 'words', to: fieldAddress(name) };
  }
}

/** The words for normal of a finding or number. A normal answer is set bold among its fellows instead. */
function said(field: FormField): Pick<Row, 'normal'> {
  if (field.kind !== 'finding' && field.kind !== 'quantity') return {};
  return field.normal === undefined ? {} : { normal: field.normal };
}

const columns = { right: 'right', left: 'left', none: 'whole' } as const;

function row(fields: readonly [FormField, ...FormField[]]): Row {
  const cells = Object.fromEntries(fields.map((field) => [columns[field.side], cell(field)]));
  const { base: label } = fields[0];
  const { normal } = said(fields[0]);
  const long = { label: longWords(label), normal: longWords(normal ?? '') };
  return { label, ...(normal !== undefined && { normal }), long, ...cells };
}

/** The rows of an item: the two sides of a record share one. */
export function rowsOf(item: FormItem): Row[] {
  return recordsOf(item).map(({ fields }) => row(fields));
}
