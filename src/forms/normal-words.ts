import type { FormField } from '../../schemas/form.ts';

/** The words for normal of a field, where it has any: the finding's, the normal grades', the answer's, the range. */
export function normalWords(field: FormField): string | undefined {
  switch (field.kind) {
    case 'finding':
    case 'quantity':
      return field.normal;
    case 'scale':
    case 'choice':
      return (
        field.options
          .filter(({ normal }) => normal)
          .map(({ display }) => display)
          .join('; ') || undefined
      );
    case 'text':
      return undefined;
  }
}

/** A line that gives the normal of a record, once for both its sides: linkId `<record>.normal`. */
export function normalLines(fields: readonly FormField[]): { linkId: string; text: string }[] {
  const field = fields.find((each) => normalWords(each) !== undefined);
  if (field === undefined) return [];
  return [{ linkId: `${field.record}.normal`, text: `${field.base}, normal: ${normalWords(field)}` }];
}
