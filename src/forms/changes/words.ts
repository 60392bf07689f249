import type { Change } from './change.ts';
import { sizeOf } from './change.ts';
import type { ChangeSize } from '../releases/versions.ts';

/** What a size of change means for whoever uses the form. */
export const sizeWords: { [S in ChangeSize]: string } = {
  major: 'Major: an answer, caution or sign was lost, or means something else',
  minor: 'Minor: something was added or moved',
  patch: 'Wording or order: nothing is asked that was not asked before',
};

/** A change as a line: "Tone, right (tone.right): unit changed, from cm to mm". */
export function changeText({ what, where, words, before, after }: Change): string {
  const name = where === 'form' ? what : `${what} (${where})`;
  return `${name}: ${words}${before === undefined ? '' : `, from “${before}” to “${after ?? ''}”`}`;
}

/** Changes as lines under a heading for each size, largest first; a sentence when there is none. */
export function changesText(changes: readonly Change[]): string {
  if (sizeOf(changes) === undefined) return 'No difference in what the form asks or says.';
  const sizes = (['major', 'minor', 'patch'] as const).filter((size) => changes.some((one) => one.size === size));
  return sizes
    .map((size) =>
      [sizeWords[size], ...changes.filter((one) => one.size === size).map((one) => `  ${changeText(one)}`)].join('\n'),
    )
    .join('\n\n');
}
