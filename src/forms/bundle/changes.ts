import type { Form } from '../../../schemas/form.ts';
import { formChanges } from '../changes/form-changes.ts';
import { changesText } from '../changes/words.ts';
import { editionWords } from '../edition.ts';

/** What changed since the release before, as plain text; says so when there is none. */
export function changeList(form: Form, before: Form | undefined): string {
  const head = `Changes of ${editionWords(form)}, ${form.date}`;
  if (before === undefined) return `${head}\n\nFirst release: there is none before it.\n`;
  return `${head}\nCompared with ${editionWords(before)}, ${before.date}\n\n${changesText(formChanges(before, form))}\n`;
}
