import { labelOf, midSentence } from '../text/words.ts';
import { keepFigures, setQuotes } from '../text/set-runs.ts';

const list = new Intl.ListFormat('en-GB', { type: 'conjunction' });

/** Plain words as a printer would set them. */
export const set = (text: string): string => keepFigures(setQuotes(text));

/** Labels in the middle of a sentence: "neck and upper sternum". Throws RangeError for an unknown id. */
export const labelsOf = (entries: readonly { id: string; label: string }[], ids: readonly string[]): string =>
  set(list.format(ids.map((id) => midSentence(labelOf(entries, id)))));

/** A time to the nearest minute, at least one: "21 minutes". */
export function minutesWords(seconds: number): string {
  const minutes = Math.max(1, Math.round(seconds / 60));
  return minutes === 1 ? '1 minute' : `${minutes} minutes`;
}

/** The minute that runs when so many seconds have gone by: "12 min". */
export const minuteOf = (seconds: number): string => `${Math.floor(seconds / 60)}\u202fmin`;

/** A sentence with a stop at its end. */
export const closed = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);
