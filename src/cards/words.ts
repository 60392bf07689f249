import type { Sides } from '../../schemas/common.ts';
import { midSentence } from '../text/words.ts';

/** What stands at the head of every face. */
export const safetyWords = 'For trained staff. Follow local protocol. Not a diagnosis.';

/** On which sides of the body the manoeuvre is done; nothing where sides do not apply. */
export const sidesWords: Readonly<Record<Sides, string>> = {
  none: '',
  both: 'both sides',
  left: 'left side',
  right: 'right side',
};

/** Labels as one list that starts with a capital: "Ruler, straight edge, light". */
export const listed = (labels: readonly string[]): string =>
  labels.map((label, place) => (place === 0 ? label : midSentence(label))).join(', ');

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** A calendar day, YYYY-MM-DD, as it is printed: "25 Nov 2026". */
export const printedDay = (day: string): string => {
  const [year, month, date] = day.split('-').map(Number);
  return `${date} ${months[(month ?? 1) - 1]} ${year}`;
};
