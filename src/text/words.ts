import type { Urgency } from '../../schemas/common.ts';
import { thin } from './numbers.ts';

/** The label of the entry with this id. Throws RangeError when none has it. */
export function labelOf(entries: readonly { id: string; label: string }[], id: string): string {
  const label = entries.find((entry) => entry.id === id)?.label;
  if (label === undefined) throw new RangeError(`no entry has the id "${id}"`);
  return label;
}

/** `text` with a small first letter, unless its first word is written in capitals. */
export function midSentence(text: string): string {
  return /^\p{Lu}(\p{Ll}|$)/u.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}

/** A time in the words of a watch: "50 s", "2 min", "2 min 30 s". `seconds` is a whole number. */
export function durationText(seconds: number): string {
  const minutes = Math.floor(seconds / 60);
  const rest = seconds % 60;
  const parts = [minutes > 0 && `${minutes}${thin}min`, (rest > 0 || minutes === 0) && `${rest}${thin}s`];
  return parts.filter((part) => part !== false).join(' ');
}

/** Urgencies, most urgent first. */
export const urgencies: readonly Urgency[] = ['now', 'today', 'soon'];

/** How fast a red flag needs an answer, in words. */
export const urgencyWords: Readonly<Record<Urgency, { label: string; meaning: string }>> = {
  now: { label: 'Now', meaning: 'stop and act' },
  today: { label: 'Today', meaning: 'same-day senior review' },
  soon: { label: 'Soon', meaning: 'an appointment, by local protocol' },
};
