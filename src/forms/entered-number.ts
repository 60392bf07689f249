import type { FormField } from '../../schemas/form.ts';
import { rangeText } from '../text/numbers.ts';

type Limits = Pick<Extract<FormField, { kind: 'quantity' }>, 'min' | 'max' | 'unit'>;

/** The number that was typed, a true minus sign included; undefined when it is not one. A comma is not guessed at. */
export function enteredNumber(typed: string): number | undefined {
  const text = typed.trim().replace('−', '-');
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(text) ? Number(text) : undefined;
}

/** What is amiss with a typed number, in words; undefined when nothing is. Nothing is refused for it. */
export function numberFault(typed: string, { min, max, unit }: Limits): string | undefined {
  const number = enteredNumber(typed);
  if (number === undefined) return 'Not a number that can be read. Write figures, with a point: 2.5.';
  if (number >= min && number <= max) return undefined;
  return `Outside ${rangeText(min, max, unit)}, what this form accepts. Check the number and its unit.`;
}
