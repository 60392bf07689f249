import type { Scope, Sides, Urgency } from '../../schemas/common.ts';
import { stageMarks } from '../figures/stage-marks.ts';
import type { Source } from '../../schemas/source.ts';

/** Returns the label of the entry with this id. Throws RangeError when none has it. */
export function labelOf(entries: readonly { id: string; label: string }[], id: string): string {
  const label = entries.find((entry) => entry.id === id)?.label;
  if (label === undefined) throw new RangeError(`no entry has the id "${id}"`);
  return label;
}

/** Joins words as a sentence does: "a", "a or b", "a, b or c". */
export function joined(words: readonly string[], last: 'and' | 'or'): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;
}

/** Returns `text` with a small first letter, unless its first word is written in capitals. */
export function midSentence(text: string): string {
  return /^\p{Lu}(\p{Ll}|$)/u.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}

/** Returns stages of alternative positions in words: "Sitting or standing", "Supine, then standing". */
export function stagesText(positions: readonly { id: string; label: string }[], stages: readonly string[][]): string {
  const stage = (ids: readonly string[], first: boolean) => {
    const labels = stageMarks(ids, positions).map((id) => (id === 'any' ? 'Any position' : labelOf(positions, id)));
    return joined(
      labels.map((label, i) => (first && i === 0 ? label : midSentence(label))),
      'or',
    );
  };
  return stages.map((ids, i) => stage(ids, i === 0)).join(', then ');
}

const sidesWords: Record<Sides, string> = { none: 'None', both: 'Both', left: 'Left', right: 'Right' };

/** Returns on which sides of the body something is done, in words. */
export const sidesText = (sides: Sides): string => sidesWords[sides];

/** Returns a time in the words of a watch: "50 s", "2 min", "2 min 30 s". `seconds` is a whole number. */
export function durationText(seconds: number): string {
  const minutes = Math.floor(seconds / 60);
  const rest = seconds % 60;
  const parts = [minutes > 0 && `${minutes} min`, (rest > 0 || minutes === 0) && `${rest} s`];
  return parts.filter((part) => part !== false).join(' ');
}

/** Names and meanings of the scopes. */
export const scopeWords: Record<Scope, { label: string; meaning: string }> = {
  screening: { label: 'Screening', meaning: 'part of the screening examination of a well adult' },
  complete: { label: 'Complete', meaning: 'added for the full examination' },
  extended: { label: 'Extended', meaning: 'done when something points to it' },
  intake: { label: 'Intake', meaning: 'measured before the examination' },
  preparation: { label: 'Preparation', meaning: 'opens or closes every examination' },
};

/** How fast a red flag needs an answer, in words. */
export const urgencyWords: Record<Urgency, { label: string; meaning: string }> = {
  now: { label: 'Now', meaning: 'stop and act' },
  today: { label: 'Today', meaning: 'same-day senior review' },
  soon: { label: 'Soon', meaning: 'an appointment, by local protocol' },
};

/** How a source was read, in words. */
export const statusWords: Record<Source['status'], { label: string; meaning: string }> = {
  seen: { label: 'Seen', meaning: 'read in a stored copy at the place that is used' },
  abstract: { label: 'Abstract', meaning: 'only the abstract was read' },
  memory: { label: 'From memory', meaning: 'not seen, and to be checked before anyone relies on it' },
  none: { label: 'Common practice', meaning: 'a habit of the trade for which no published source was found' },
};
