import type { Scope } from '../../schemas/common.ts';
import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';

/** How look-up calls "in whatever position the patient is". */
export const anyPosition = 'Any position';

/** Labels of the positions of all stages, in order, each once. */
export function positionLabels(one: Manoeuvre, { positions }: Pick<Library, 'positions'>): string[] {
  return [...new Set(one.stages.flat())].map((id) => labelOf(id, positions));
}

/** The position that stands for a manoeuvre: where its first stage is best done, or that it does not matter. */
export function mainPosition(one: Manoeuvre, { positions }: Pick<Library, 'positions'>): string {
  const first = one.stages[0] ?? [];
  return first.length === positions.length ? anyPosition : labelOf(first[0] ?? '', positions);
}

/** Labels of what has to be laid out. */
export function instrumentLabels(one: Manoeuvre, { instruments }: Pick<Library, 'instruments'>): string[] {
  return one.instruments.map((id) => labelOf(id, instruments));
}

/** A scope as a list to choose from shows it. */
export function scopeLabel(scope: Scope): string {
  return scope.charAt(0).toUpperCase() + scope.slice(1);
}

function labelOf(id: string, entries: readonly { id: string; label: string }[]): string {
  return entries.find((entry) => entry.id === id)?.label ?? id;
}
