import type { Scope } from '../../schemas/common.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';

/** What is kept first when there is too little time; preparation is never dropped. */
const keptFirst: Record<Scope, number> = { preparation: 0, intake: 1, screening: 1, complete: 2, extended: 3 };

/**
 * The manoeuvres that fit, in page order: screening before complete before extended, earlier on the page first, each
 * kept when it still fits beside those kept before it.
 * @param seconds that there are
 * @param movements seconds of position changes that these manoeuvres take together
 */
export function fitting(
  manoeuvres: readonly Manoeuvre[],
  seconds: number,
  movements: (some: readonly Manoeuvre[]) => number,
): Manoeuvre[] {
  const total = (some: readonly Manoeuvre[]): number => some.reduce((sum, one) => sum + one.seconds, 0);
  const fits = (some: readonly Manoeuvre[]): boolean =>
    total(some) <= seconds && total(some) + movements(inOrder(manoeuvres, some)) <= seconds;
  const ranked = [...manoeuvres].sort((a, b) => keptFirst[a.scope] - keptFirst[b.scope]);
  const always = ranked.filter(({ scope }) => scope === 'preparation').length;
  const whole = longestPrefix(ranked, always, fits);
  const kept = ranked.slice(0, whole);
  for (const one of ranked.slice(whole)) if (fits([...kept, one])) kept.push(one);
  return inOrder(manoeuvres, kept);
}

const inOrder = (all: readonly Manoeuvre[], some: readonly Manoeuvre[]): Manoeuvre[] => {
  const kept = new Set(some);
  return all.filter((one) => kept.has(one));
};

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
