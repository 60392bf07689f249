import type { Value } from '../../schemas/value.ts';
import { valueText } from '../text/value-text.ts';

const limitWords = { 'at-most': 'at most', 'at-least': 'at least', below: 'below', above: 'above' } as const;

/** What is normal for a quantity, in words: "at most 3 cm", "12–18 /min". */
export function normalRange(value: Value): string {
  return value.kind === 'limit' ? `${limitWords[value.normal]} ${valueText(value)}` : valueText(value);
}
