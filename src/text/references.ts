import type { Library } from '../../schemas/library.ts';

/** The parts of the Library that a line of prose can refer to. */
export type References = Pick<Library, 'values' | 'scales' | 'evidence' | 'tools'>;

/** The entry with an id. Throws for an unknown one: the checker lets none through. */
export function byId<T extends { id: string }>(entries: readonly T[], id: string): T {
  const found = entries.find((entry) => entry.id === id);
  if (found === undefined) throw new Error(`No entry has the id "${id}".`);
  return found;
}
