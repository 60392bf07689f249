import type { Form, FormField, FormItem } from '../../../schemas/form.ts';
import { present } from '../../fixtures/present.ts';
import { fixtureForm } from './fixtures.ts';

/** The fixture form with something to look out for before the examination. */
export function paperForm(): Form {
  const form = fixtureForm();
  const greet = present(form.sections[0]?.items[0]);
  greet.redFlags = [
    { urgency: 'now', finding: 'No answer to a greeting.', action: 'Call for help; start resuscitation.' },
    { urgency: 'today', finding: 'Answers oddly', action: 'Ask a senior to come.' },
  ];
  return form;
}

/** The first item that asks for anything, in a copy of the form. */
function firstAsking(form: Form): { copy: Form; items: FormItem[]; index: number } {
  const copy = structuredClone(form);
  const asks = ({ fields }: FormItem): boolean => fields.length > 0;
  const { items } = present(copy.sections.find((section) => section.items.some(asks)));
  return { copy, items, index: items.findIndex(asks) };
}

/** The form with its first field changed. */
export function withField(form: Form, change: (field: FormField) => FormField): Form {
  return withItem(form, (item) => ({ ...item, fields: [change(present(item.fields[0])), ...item.fields.slice(1)] }));
}

/** The form with its first item that asks for anything changed. */
export function withItem(form: Form, change: (item: FormItem) => FormItem): Form {
  const { copy, items, index } = firstAsking(form);
  items[index] = change(present(items[index]));
  return copy;
}

/** The form with its first asking item once, then again `times` times, each with linkIds of its own. */
export function repeated(form: Form, times: number): Form {
  const { copy, items, index } = firstAsking(form);
  const item = present(items[index]);
  const again = (n: number): FormItem => ({
    ...item,
    manoeuvre: `${item.manoeuvre}-${n}`,
    title: `${item.title} again ${n}`,
    fields: item.fields.map((field) => renamed(field, n)),
  });
  items.splice(index + 1, 0, ...Array.from({ length: times }, (_, n) => again(n + 1)));
  return copy;
}

function renamed(field: FormField, n: number): FormField {
  const linkId = `r${n}-${field.linkId}`;
  if (field.kind !== 'finding') return { ...field, linkId };
  return { ...field, linkId, detail: `r${n}-${field.detail}`, reason: `r${n}-${field.reason}` };
}
