import type { FormField, FormItem } from '../../schemas/form.ts';
import { numberText } from '../text/numbers.ts';

/** What is asked once: its words, and a field for the whole or for each side, the right before the left. */
export interface RecordFields {
  /** Label without side. */
  label: string;
  fields: readonly [FormField, ...FormField[]];
}

/** The records of an item in the order asked; the two sides of a record stand together. */
export function recordsOf({ fields }: Pick<FormItem, 'fields'>): RecordFields[] {
  const groups = Map.groupBy(fields, ({ record, base }) => `${record} ${base}`);
  return [...groups.values()].flatMap(([first, ...more]) =>
    first === undefined ? [] : [{ label: first.base, fields: [first, ...more] as const }],
  );
}

/** The range that a number is accepted in, in words: "−5 to 20". */
export const acceptedRange = ({ min, max }: { min: number; max: number }): string =>
  `${numberText(min)} to ${numberText(max)}`;
