import type { Addressable } from '../text/html.ts';
import type { Library } from '../../schemas/library.ts';
import { requireEdition } from '../forms/clinic/load.ts';

/** The shared content, or the edition of the clinic that CLINIC names, read once for the whole build. */
export const edition = requireEdition('content', process.env['CLINIC']);

/** The Library as this site has it. */
export const library: Library = edition.library;

const base = import.meta.env.BASE_URL.replace(/\/+$/, '');

const systemOf = new Map(
  library.protocols.flatMap(({ id, manoeuvres }) => manoeuvres.map((one) => [one.id, id] as const)),
);

/** An address under the base path, from one that starts at the site's root: `/cards/` → `/sub/cards/`. */
export function href(path: string): string {
  return `${base}${path}`;
}

/** The address of what a link or a reference in prose points at. */
export function address(to: Addressable): string {
  if (to.kind === 'web') return to.url;
  if (to.kind === 'manoeuvre') return href(`/protocols/${systemOf.get(to.id) ?? ''}/${to.id}/`);
  if (to.kind === 'system') return href(`/protocols/${to.id}/`);
  if (to.kind === 'guide') return href(`/guides/${to.id}/`);
  if (to.kind === 'measure') return href(`/measure/${to.id}/`);
  return href(`/sources/#${to.kind}-${to.id}`);
}
