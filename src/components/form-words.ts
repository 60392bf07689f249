import type { Form, FormField, FormItem } from '../../schemas/form.ts';
import { answersOfForm } from '../forms/answers.ts';
import { normalWords } from '../forms/normal-words.ts';
import { rangeText } from '../text/numbers.ts';

/** What is asked once for a record: its words, and a field for each side. */
export interface Asked {
  label: string;
  /** What stands below it in small: the words for normal, the range that a number is accepted in. */
  notes: string[];
  fields: FormField[];
}

/** The records of an item in the order asked; the two sides of a record stand together. */
export function askedOf({ fields }: FormItem): Asked[] {
  const groups = new Map<string, Asked>();
  for (const field of fields) {
    const key = `${field.record} ${field.base}`;
    const asked = groups.get(key) ?? { label: field.base, notes: notesOf(field), fields: [] };
    groups.set(key, { ...asked, fields: [...asked.fields, field] });
  }
  return [...groups.values()];
}

function notesOf(field: FormField): string[] {
  const normal = normalWords(field);
  return [
    ...(normal === undefined ? [] : [`Normal: ${normal}.`]),
    ...(field.kind === 'quantity' ? [`Accepts ${rangeText(field.min, field.max, field.unit)}.`] : []),
  ];
}

/** How many blanks a form has to fill, and how many manoeuvres it holds. */
export function countsOf(form: Form): { blanks: number; manoeuvres: number } {
  const manoeuvres = form.sections.reduce((total, { items }) => total + items.length, 0);
  return { blanks: answersOfForm(form).length, manoeuvres };
}

/** Size of a file for reading, in kilobytes of 1000 bytes, never 0. */
export function sizeWords({ byteLength }: Uint8Array): string {
  return `${Math.max(1, Math.round(byteLength / 1000))} KB`;
}

/** What a form's state means for whoever would use it. */
export const stateWords: { [S in Form['status']]: { label: string; meaning: string } } = {
  draft: {
    label: 'Draft',
    meaning:
      'Not released and not signed off: it changes without notice. Try it, comment on it, do not put it into use.',
  },
  active: { label: 'Released', meaning: 'Signed off. This version no longer changes.' },
  retired: { label: 'Withdrawn', meaning: 'No longer to be used.' },
};
