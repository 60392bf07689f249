import type { Library } from '../../schemas/library.ts';
import type { ChangeSeconds } from './search/problem.ts';

/**
 * Whole seconds from one position to another, before any pace.
 * @throws RangeError for a change that the library does not hold
 */
export function changeSecondsOf({ positions }: Pick<Library, 'positions'>): ChangeSeconds {
  const table = new Map(positions.map(({ id, changeSeconds }) => [id, changeSeconds]));
  return (from, to) => {
    if (from === to) return 0;
    const seconds = table.get(from)?.[to];
    if (seconds === undefined) throw new RangeError(`no seconds are given for the change from "${from}" to "${to}"`);
    return seconds;
  };
}

/** Seconds at a pace, to the millisecond, so that sums of fractions stay readable. */
export const atPace = (seconds: number, pace = 1): number => Math.round(seconds * pace * 1000) / 1000;
