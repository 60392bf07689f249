import type { FormDefinition } from '../../schemas/form-definition.ts';
import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';

/** Every manoeuvre, head to toe: systems in order of examination, each in the order of its page. */
export function inPageOrder(library: Pick<Library, 'protocols'>): Manoeuvre[] {
  return library.protocols.flatMap(({ manoeuvres }) => manoeuvres);
}

/** Ids of the manoeuvres of an examination, in page order: all of its scopes, and those that it names. */
export function manoeuvresOf(
  library: Pick<Library, 'protocols'>,
  form: Pick<FormDefinition, 'scopes' | 'manoeuvres'>,
): string[] {
  const named = new Set(form.manoeuvres);
  return inPageOrder(library)
    .filter(({ id, scope }) => form.scopes.includes(scope) || named.has(id))
    .map(({ id }) => id);
}
