import type { FormPosition, FormSection } from '../../schemas/form.ts';
import type { Library } from '../../schemas/library.ts';

/** Whatever says how positions are called: the Library, or a form, which keeps its own words. */
export interface PositionLabels {
  readonly positions: readonly FormPosition[];
}

/** The positions of a form's items with their labels, by id; `any` needs none. */
export function positionsOf({ positions }: Library, sections: readonly FormSection[]): FormPosition[] {
  const used = new Set(sections.flatMap(({ items }) => items.flatMap((item) => item.positions)));
  return positions
    .filter(({ id }) => used.has(id))
    .map(({ id, label }) => ({ id, label }))
    .sort((a, b) => (a.id < b.id ? -1 : 1));
}
