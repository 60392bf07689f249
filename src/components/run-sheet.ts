import type { FormDefinition } from '../../schemas/form-definition.ts';
import type { Library } from '../../schemas/library.ts';
import type { Plan, PlanRequest } from '../../schemas/plan.ts';
import { blocksOf, type Block } from '../plan/blocks.ts';
import { headToToe } from '../plan/head-to-toe.ts';
import { planRequest } from '../plan/plan.ts';
import { stockRequest } from '../plan/stock-request.ts';
import { systemBySystem } from '../plan/system-by-system.ts';
import { countWords } from '../sheets/proof-words.ts';
import { durationText, joined, labelOf, midSentence } from './labels.ts';

/** The run sheet of a stock examination with what its page tells of it. */
export interface Sheet {
  form: FormDefinition;
  plan: Plan;
  blocks: Block[];
  others: OtherOrders;
}

/** What the same steps would add up to in the orders that a sheet is compared with. */
export interface OtherOrders {
  headToToe: Plan['totals'];
  systemBySystem: Plan['totals'];
}

/** Works out the run sheet of a stock examination. */
export function sheetOf(library: Library, form: FormDefinition): Sheet {
  const request = stockRequest(form);
  const plan = planRequest(library, request);
  return { form, plan, blocks: blocksOf(plan), others: otherOrders(library, request, plan) };
}

/** Works out the orders that a sheet is compared with. */
export const otherOrders = (library: Library, request: PlanRequest, plan: Plan): OtherOrders => ({
  headToToe: headToToe(library, request, plan),
  systemBySystem: systemBySystem(library, request, plan),
});

/** A time to the nearest minute: "21 minutes"; under a minute in seconds. */
export function minutesText(seconds: number): string {
  return seconds < 60 ? durationText(Math.round(seconds)) : countWords(Math.round(seconds / 60), 'minute');
}

/** Time since the beginning of the sheet, to the second: "12 min 30 s". */
export const sinceStart = (seconds: number): string => durationText(Math.round(seconds));

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
