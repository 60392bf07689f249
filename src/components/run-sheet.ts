import type { FormDefinition } from '../../schemas/form-definition.ts';
import type { Library } from '../../schemas/library.ts';
import type { Plan } from '../../schemas/plan.ts';
import { blocksOf, type Block } from '../plan/blocks.ts';
import { headToToe } from '../plan/head-to-toe.ts';
import { planRequest } from '../plan/plan.ts';
import { stockRequest } from '../plan/stock-request.ts';
import { durationText, joined, labelOf, midSentence } from './labels.ts';

/** The run sheet of a stock examination with what its page tells of it. */
export interface Sheet {
  form: FormDefinition;
  plan: Plan;
  blocks: Block[];
  /** What plain head-to-toe order would add up to. */
  plain: Plan['totals'];
}

/** Works out the run sheet of a stock examination. */
export function sheetOf(library: Library, form: FormDefinition): Sheet {
  const request = stockRequest(form);
  const plan = planRequest(library, request);
  return { form, plan, blocks: blocksOf(plan), plain: headToToe(library, request, plan) };
}

/** A number of things: "no change", "1 change", "3 changes". */
export function countWords(count: number, noun: string): string {
  return count === 0 ? `no ${noun}` : `${count} ${noun}${count === 1 ? '' : 's'}`;
}

/** A time to the nearest minute: "21 minutes"; under a minute in seconds. */
export function minutesText(seconds: number): string {
  return seconds < 60 ? durationText(Math.round(seconds)) : countWords(Math.round(seconds / 60), 'minute');
}

/** Time since the beginning of the sheet, to the second: "12 min 30 s". */
export const sinceStart = (seconds: number): string => durationText(Math.round(seconds));

/** How the sheet compares with plain head-to-toe order, in a sentence. */
export function comparisonText({ plan: { totals }, plain }: Pick<Sheet, 'plan' | 'plain'>): string {
  if (plain.positionChanges === 0) return 'Plain head-to-toe order would not move the patient either.';
  const plainly = `${countWords(plain.positionChanges, 'change')}, ${durationText(Math.round(plain.positionSeconds))}`;
  const saved = Math.round(plain.positionSeconds - totals.positionSeconds);
  return saved > 0
    ? `Plain head-to-toe order would move the patient longer: ${plainly}, so ${durationText(saved)} more.`
    : `Plain head-to-toe order would move the patient as long: ${plainly}.`;
}

/** Whether the order is proven, in a sentence. */
export function proofText({ optimal, bound }: Pick<Plan, 'optimal' | 'bound'>): string {
  return optimal.positionSeconds
    ? 'No order that keeps what must come first moves the patient for less.'
    : `The best order found in the time allowed; none takes less than ${durationText(Math.round(bound.positionSeconds))} of moving.`;
}

/** Anchor of a step of a sheet. */
export const stepAnchor = (sheet: string, number: number): string => `${sheet}-step-${number}`;

/** Labels in a sentence: "ruler in centimetres and pen light or torch". Throws RangeError for an unknown id. */
export function labelsText(entries: readonly { id: string; label: string }[], ids: readonly string[]): string {
  return joined(
    ids.map((id) => midSentence(labelOf(entries, id))),
    'and',
  );
}

/** Regions in a sentence: "neck and upper sternum". Throws RangeError for an unknown id. */
export const exposedWords = ({ exposures }: Pick<Library, 'exposures'>, ids: readonly string[]): string =>
  labelsText(exposures, ids);
