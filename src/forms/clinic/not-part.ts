import type { Form, FormItem, FormOmission } from '../../../schemas/form.ts';

/** Head of the list of what a clinic's form leaves out, in every format. */
export const notPartTitle = 'Not part of this clinic’s form';

/** Said below that head. */
export const notPartGuide =
  'The shared form asks for these; this one does not. What cannot wait is acted on wherever it is seen.';

/** One omission in words: the whole item by its title, or what is not asked of one that the form holds. */
export function omissionWords({ title, whole, asked }: FormOmission): string {
  if (whole) return asked.length === 0 ? title : `${title} (${asked.join('; ')})`;
  return `${title}: only ${asked.join('; ')}`;
}

/** What a clinic's form leaves out; nothing for a shared form. */
export const omissionsOf = ({ notPart = [] }: Form): readonly FormOmission[] => notPart;

/** A whole item that is left out, as an item that asks for nothing: its safety lines are shown as those of any other. */
export function omittedItem({ manoeuvre, title, sensitive, cautions, redFlags }: FormOmission): FormItem {
  return { manoeuvre, title, sides: 'none', sensitive, positions: ['any'], cautions, redFlags, fields: [] };
}
