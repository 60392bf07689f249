import type { FormField } from '../../schemas/form.ts';
import type { Library } from '../../schemas/library.ts';
import type { Record } from '../../schemas/record.ts';
import { unitLabel } from '../text/numbers.ts';
import { plainText } from '../text/plain.ts';
import { normalText } from '../text/value-text.ts';
import { citation } from './citation.ts';

/** What fields of every kind have. */
export type FieldHead = Pick<
  FormField,
  'linkId' | 'label' | 'base' | 'side' | 'record' | 'manoeuvre' | 'code' | 'codeDisplay'
>;

/** What stands beside the blank of a count or a ratio. */
const unitless = 'number';

type OfKind<K extends Record['kind']> = Extract<Record, { kind: K }>;
type Option = Extract<FormField, { kind: 'choice' }>['options'][number];

/** The field of a record's kind, its scale and normal value written out. */
export function fieldOfKind(library: Library, record: Record, head: FieldHead): FormField {
  switch (record.kind) {
    case 'finding': {
      const { linkId } = head;
      const normal = plainText(record.normal, library);
      return { kind: 'finding', ...head, normal, detail: `${linkId}.detail`, reason: `${linkId}.reason` };
    }
    case 'scale':
      return scaleField(library, record, head);
    case 'choice':
      return { kind: 'choice', ...head, options: record.options.map((words) => choiceOption(words, record.normal)) };
    case 'quantity':
      return quantityField(library, record, head);
    case 'text':
      return { kind: 'text', ...head };
  }
}

function scaleField(library: Library, record: OfKind<'scale'>, head: FieldHead): FormField {
  const scale = library.scales.find(({ id }) => id === record.scale);
  if (scale === undefined)
    throw new Error(`The record "${record.id}" names the scale "${record.scale}", which the library does not have.`);
  const options = scale.grades.map(({ code, meaning, normal }) => ({ code, display: `${code} – ${meaning}`, normal }));
  return { kind: 'scale', ...head, ...citation(library, scale), scale: scale.id, scaleTitle: scale.title, options };
}

function choiceOption(words: string, normal: string | undefined): Option {
  return { code: slug(words), display: words, normal: words === normal };
}

/** Signs that tell answers apart, in words. */
const signs: { [sign: string]: string } = { '<': 'below', '>': 'above', '≤': 'at-most', '≥': 'at-least', '+': 'plus' };

/** "above the jaw" → `above-the-jaw`, "≥ 3" → `at-least-3`: a code that says what it stands for. */
function slug(words: string): string {
  const spelt = words.replace(/[<>≤≥+]/g, (sign) => ` ${signs[sign]} `);
  const ascii = spelt
    .normalize('NFKD')
    .replace(/\p{Mark}/gu, '')
    .toLowerCase();
  return ascii.replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '');
}

function quantityField(library: Library, record: OfKind<'quantity'>, head: FieldHead): FormField {
  const { unit, min, max } = record;
  const value = record.value === undefined ? undefined : library.values.find(({ id }) => id === record.value);
  const normal = value === undefined ? {} : { ...citation(library, value), normal: normalText(value) };
  return { kind: 'quantity', ...head, unit, unitLabel: unitLabel(unit) || unitless, min, max, ...normal };
}
