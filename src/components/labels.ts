import type { Scope, Sides } from '../../schemas/common.ts';
import { stageMarks } from '../figures/stage-marks.ts';
import { labelOf, midSentence } from '../text/words.ts';

export { statusWords } from '../text/source-status.ts';
export { durationText, labelOf, midSentence, urgencyWords } from '../text/words.ts';

/** Joins words as a sentence does: "a", "a or b", "a, b or c". */
export function joined(words: readonly string[], last: 'and' | 'or'): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;
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

/** Names and meanings of the scopes. */
export const scopeWords: Record<Scope, { label: string; meaning: string }> = {
  screening: { label: 'Screening', meaning: 'part of the screening examination of a well adult' },
  complete: { label: 'Complete', meaning: 'added for the full examination' },
  extended: { label: 'Extended', meaning: 'done when something points to it' },
  intake: { label: 'Intake', meaning: 'measured before the examination' },
  preparation: { label: 'Preparation', meaning: 'opens or closes every examination' },
};
