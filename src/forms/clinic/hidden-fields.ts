import type { FormField, FormItem, FormOmission } from '../../../schemas/form.ts';

/** Labels of fields without their sides, each once. */
const labelsOf = (fields: readonly FormField[]): string[] => [...new Set(fields.map(({ base }) => base))];

/** A whole item that is left out: what it asks for, and what cannot be hidden with it. */
export function wholeOmission({ manoeuvre, title, fields, sensitive, cautions, redFlags }: FormItem): FormOmission {
  return { manoeuvre, title, whole: true, asked: labelsOf(fields), sensitive, cautions, redFlags };
}

/** An item without the fields of some records, and what is left out of it; its cautions and red flags stay with it. */
export function withoutRecords(
  item: FormItem,
  hidden: ReadonlySet<string>,
): { item: FormItem; omission?: FormOmission } {
  const gone = item.fields.filter(({ record }) => hidden.has(record));
  if (gone.length === 0) return { item };
  const { manoeuvre, title } = item;
  const safety = { sensitive: false, cautions: [], redFlags: [] };
  return {
    item: { ...item, fields: item.fields.filter(({ record }) => !hidden.has(record)) },
    omission: { manoeuvre, title, whole: false, asked: labelsOf(gone), ...safety },
  };
}
