import type { Form, FormField, FormItem } from '../../../schemas/form.ts';
import { present } from '../../fixtures/present.ts';
import { fixtureForm } from './fixtures.ts';

/** An item for each kind of field: on paper, an item may be no taller than a page. */
function byKind(item: FormItem): FormItem[] {
  const kinds = [...Map.groupBy(item.fields, ({ kind }) => kind)];
  if (kinds.length < 2) return [item];
  return kinds.map(([kind, fields]) => ({
    ...item,
    manoeuvre: `${item.manoeuvre}-${kind}`,
    title: `${item.title} at the ${kind}`,
    fields,
  }));
}

/** The fixture form with its longest item spread over one for each kind of field. */
export function paperForm(): Form {
  const form = fixtureForm();
  return { ...form, sections: form.sections.map((section) => ({ ...section, items: section.items.flatMap(byKind) })) };
}

/** The form with its first field changed. */
export function withField(form: Form, change: (field: FormField) => FormField): Form {
  const copy = structuredClone(form);
  const item = present(copy.sections.flatMap(({ items }) => items).find(({ fields }) => fields.length > 0));
  item.fields[0] = change(present(item.fields[0]));
  return copy;
}

/** The form with its first item that asks for anything changed. */
export function withItem(form: Form, change: (item: FormItem) => FormItem): Form {
  const copy = structuredClone(form);
  const section = present(copy.sections.find(({ items }) => items.some(({ fields }) => fields.length > 0)));
  section.items[0] = change(present(section.items[0]));
  return copy;
}
