import type { Urgency } from '../../../schemas/common.ts';
import type { FormItem } from '../../../schemas/form.ts';

/** Red flags of one urgency, each with what to do. */
export interface FlagGroup {
  urgency: Urgency;
  /** What the urgency asks for. */
  words: string;
  flags: { finding: string; action: string }[];
}

const urgencies: readonly { urgency: Urgency; words: string }[] = [
  { urgency: 'now', words: 'act now' },
  { urgency: 'today', words: 'senior review the same day' },
  { urgency: 'soon', words: 'appointment soon by local protocol' },
];

/** A sentence with a stop at its end. */
const closed = (sentence: string): string => (/[.!?]$/.test(sentence) ? sentence : `${sentence}.`);

/** A finding without a stop at its end, to be one of a row of findings. */
const open = (finding: string): string => finding.replace(/\.$/, '');

/** The red flags of an item by urgency, most urgent first, with what to do in full. */
export function flagGroups({ redFlags }: FormItem): FlagGroup[] {
  return urgencies.flatMap(({ urgency, words }) => {
    const flags = redFlags
      .filter((flag) => flag.urgency === urgency)
      .map(({ finding, action }) => ({ finding: open(finding), action: closed(action) }));
    return flags.length === 0 ? [] : [{ urgency, words, flags }];
  });
}

/** Findings of an item that cannot wait, without what to do: short enough to stand at the item. */
export const nowFindings = ({ redFlags }: FormItem): string[] =>
  redFlags.filter(({ urgency }) => urgency === 'now').map(({ finding }) => open(finding));

/** The cautions of an item, each a sentence; authors put the most important first. */
export const cautionSentences = ({ cautions }: FormItem): string[] => cautions.map(closed);

/** Said of every sensitive item. */
export const sensitiveWords =
  'Sensitive: only where indicated, trained and permitted; explicit consent; chaperone offered; right to stop.';
