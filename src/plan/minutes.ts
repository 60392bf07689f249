import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import type { Group } from './rungs.ts';

/** Seconds that some manoeuvres take together, position changes included. */
export interface Needed {
  seconds: number;
  /** No order takes fewer; equal to `seconds` when that is proven. */
  bound: number;
}

/** What fits in the time there is. */
export interface Fitting {
  /** In page order. */
  kept: Manoeuvre[];
  dropped: {
    group: Group;
    /** Least seconds of a sheet that holds it beside what was kept before it. */ needs: number;
  }[];
  /** Whether no group that was left out would have fitted beside what was kept before it. */
  isProven: boolean;
}

/**
 * Keeps, group by group, what still fits beside all that was kept before it: of two sets the one that holds the first
 * group in which they differ is the better, so this is the best there is.
 * @param groups those to be kept first first
 * @param limit seconds that there are
 * @param needed seconds of a set, in page order; never fewer for a larger set
 */
export function fitting(
  manoeuvres: readonly Manoeuvre[],
  groups: readonly Group[],
  limit: number,
  needed: (some: readonly Manoeuvre[]) => Needed,
): Fitting {
  const sorted = [...groups.filter(({ isAlways }) => isAlways), ...groups.filter(({ isAlways }) => !isAlways)];
  const atLeast = groups.filter(({ isAlways }) => isAlways).length;
  const neededOf = (some: readonly Group[]): Needed => needed(inOrder(manoeuvres, some));
  const whole = longestPrefix(sorted, atLeast, (some) => neededOf(some).seconds <= limit);
  const kept = sorted.slice(0, whole);
  const found: Fitting = { kept: [], dropped: [], isProven: true };
  let moved = movedIn(kept, neededOf(kept).bound);
  for (const group of sorted.slice(whole)) {
    // A larger set never moves the patient less, so that most need not be worked out.
    const quick = moved + workIn([...kept, group]);
    const { seconds, bound } = quick > limit ? { seconds: quick, bound: quick } : neededOf([...kept, group]);
    if (seconds <= limit) {
      kept.push(group);
      moved = movedIn(kept, bound);
    } else {
      found.dropped.push({ group, needs: bound });
      found.isProven &&= bound > limit;
    }
  }
  return { ...found, kept: inOrder(manoeuvres, kept) };
}

/** Seconds of the manoeuvres themselves. */
const workIn = (groups: readonly Group[]): number =>
  groups.reduce((sum, { manoeuvres }) => manoeuvres.reduce((all, one) => all + one.seconds, sum), 0);

const movedIn = (groups: readonly Group[], seconds: number): number => seconds - workIn(groups);

function inOrder(all: readonly Manoeuvre[], groups: readonly Group[]): Manoeuvre[] {
  const kept = new Set(groups.flatMap((group) => group.manoeuvres));
  return all.filter((one) => kept.has(one));
}

/** How many of the first ones fit together; more never take less time, so halving finds it. */
function longestPrefix<T>(list: readonly T[], atLeast: number, fits: (some: readonly T[]) => boolean): number {
  let low = atLeast;
  let high = list.length;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (fits(list.slice(0, middle))) low = middle;
    else high = middle - 1;
  }
  return low;
}
