import type { FormField, FormItem } from '../../../schemas/form.ts';

type ScaleField = Extract<FormField, { kind: 'scale' }>;

/** A scale with each grade in words. */
export interface ScaleKey {
  title: string;
  grades: string[];
  source?: string;
}

function scaleKey({ scaleTitle, options, source }: ScaleField): ScaleKey {
  const grades = options.map(({ display }) => display);
  return { title: scaleTitle, grades, ...(source === undefined ? {} : { source }) };
}

const scaleFields = (items: readonly FormItem[]): ScaleField[] =>
  items.flatMap(({ fields }) => fields).filter((field) => field.kind === 'scale');

/** The scales of an item that none before it in its section asks for. */
export function newScales(item: FormItem, before: readonly FormItem[]): ScaleKey[] {
  const known = new Set(scaleFields(before).map(({ scale }) => scale));
  const scales = Map.groupBy(scaleFields([item]), ({ scale }) => scale);
  return [...scales].flatMap(([id, [first]]) => (first === undefined || known.has(id) ? [] : [scaleKey(first)]));
}
