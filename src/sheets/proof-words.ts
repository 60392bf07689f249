import type { Plan } from '../../schemas/plan.ts';
import { durationText } from '../text/words.ts';

/** A number of things: "no change", "1 change", "3 changes". */
export function countWords(count: number, noun: string): string {
  return count === 0 ? `no ${noun}` : `${count} ${noun}${count === 1 ? '' : 's'}`;
}

/** What is proven of a sheet, in sentences. */
export function proofText({ optimal, bound, totals }: Pick<Plan, 'optimal' | 'bound' | 'totals'>): string {
  const least = (proven: boolean | undefined): string => (proven === true ? 'proven least' : 'least found, not proven');
  const route = optimal.positionSeconds
    ? 'Proven: no order that keeps what must come first spends less time moving the patient.'
    : `Not proven: the best order found in the time allowed; none can take less than ${durationText(Math.round(bound.positionSeconds))} of moving.`;
  const uncovering = `what is uncovered changes ${timesWords(totals.exposureChanges)} (${least(optimal.exposureChanges)})`;
  const moves = `the examiner moves ${timesWords(totals.examinerMoves)} (${least(optimal.examinerMoves)})`;
  return `${route} On this way ${uncovering} and ${moves}.${keptText(optimal.kept)}`;
}

function timesWords(count: number): string {
  return count === 0 ? 'never' : count === 1 ? 'once' : `${count} times`;
}

function keptText(proven: boolean | undefined): string {
  if (proven === undefined) return '';
  return proven
    ? ' Nothing that is left out would fit in the time beside what matters more.'
    : ' More might fit in the time: this is the best that was found.';
}

/** What the same steps would take in the orders that a sheet is compared with, in a sentence. */
export function comparedWords(headToToe: Plan['totals'], systemBySystem: Plan['totals']): string {
  const order = (name: string, { positionChanges, positionSeconds, seconds }: Plan['totals']): string =>
    `${name} ${countWords(positionChanges, 'change')}, ${durationText(Math.round(positionSeconds))} of moving, ${countWords(Math.round(seconds / 60), 'minute')} in all`;
  return `The same steps ${order('head to toe:', headToToe)}; ${order('system by system:', systemBySystem)}.`;
}
