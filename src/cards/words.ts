import type { Sides, Urgency } from '../../schemas/common.ts';

/** What stands at the head of every face. */
export const safetyWords = 'For trained staff. Follow local protocol. Not a diagnosis.';

/** How fast a red flag needs an answer, in words. */
export const urgencyWords: Readonly<Record<Urgency, string>> = {
  now: 'Now: stop and act',
  today: 'Today: same-day senior review',
  soon: 'Soon: an appointment, by local protocol',
};

/** Urgencies in the order of a card. */
export const urgencies: readonly Urgency[] = ['now', 'today', 'soon'];

/** On which sides of the body the manoeuvre is done; nothing where sides do not apply. */
export const sidesWords: Readonly<Record<Sides, string>> = {
  none: '',
  both: 'both sides',
  left: 'left side',
  right: 'right side',
};

/** `text` with a small first letter, unless its first word is an abbreviation. */
export const midSentence = (text: string): string =>
  /^\p{Lu}(\p{Ll}|$)/u.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;

/** Labels as one list that starts with a capital: "Ruler, straight edge, light". */
export const listed = (labels: readonly string[]): string =>
  labels.map((label, place) => (place === 0 ? label : midSentence(label))).join(', ');

/** Whole seconds as a watch shows them: "50 s", "2 min 30 s". */
export const duration = (seconds: number): string => {
  const [minutes, rest] = [Math.floor(seconds / 60), seconds % 60];
  return [minutes > 0 ? `${minutes}\u202fmin` : '', rest > 0 || minutes === 0 ? `${rest}\u202fs` : '']
    .filter(Boolean)
    .join(' ');
};

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** A calendar day, YYYY-MM-DD, as it is printed: "25 Nov 2026". */
export const printedDay = (day: string): string => {
  const [year, month, date] = day.split('-').map(Number);
  return `${date} ${months[(month ?? 1) - 1]} ${year}`;
};
