import type { ChangeSize } from '../releases/versions.ts';

/** One difference between two versions of a form. */
export interface Change {
  size: ChangeSize;
  /** What it is about: `form`, a section's or a manoeuvre's id, or a field's linkId. */
  where: string;
  /** The same in words, for people. */
  what: string;
  /** What happened to it: "removed", "unit changed". */
  words: string;
  before?: string;
  after?: string;
}

/** What a change is about. */
export type Subject = Pick<Change, 'where' | 'what'>;

/** A change of something that was there before and is there still. */
export function changed(
  subject: Subject,
  size: ChangeSize,
  words: string,
  before: string | number | undefined,
  after: string | number | undefined,
): Change[] {
  if (before === after) return [];
  return [{ size, ...subject, words, before: shown(before), after: shown(after) }];
}

const shown = (value: string | number | undefined): string => (value === undefined ? 'none' : String(value));

const order: readonly ChangeSize[] = ['major', 'minor', 'patch'];

/** The largest of some changes; nothing when there is none. */
export function sizeOf(changes: readonly Change[]): ChangeSize | undefined {
  return order.find((size) => changes.some((change) => change.size === size));
}

/** The largest first; within a size in the form's order. */
export function largestFirst(changes: readonly Change[]): Change[] {
  return order.flatMap((size) => changes.filter((change) => change.size === size));
}
