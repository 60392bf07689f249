import type { Urgency } from '../../../schemas/common.ts';
import type { FormItem } from '../../../schemas/form.ts';

/** Red flags of one urgency: what to look for, and what to do where nothing may be looked up first. */
export interface FlagGroup {
  urgency: Urgency;
  /** What the urgency asks for. */
  words: string;
  flags: { finding: string; action?: string }[];
}

const urgencies: readonly { urgency: Urgency; words: string }[] = [
  { urgency: 'now', words: 'act now' },
  { urgency: 'today', words: 'senior review the same day' },
  { urgency: 'soon', words: 'appointment soon by local protocol' },
];

/** A sentence with a stop at its end. */
const closed = (sentence: string): string => (/[.!?]$/.test(sentence) ? sentence : `${sentence}.`);

/**
 * The red flags of an item by urgency. What to do is printed with those that can't wait;
 * for the others the heading says it, and the manoeuvre's page says more.
 */
export function flagGroups({ redFlags }: FormItem): FlagGroup[] {
  return urgencies.flatMap(({ urgency, words }) => {
    const flags = redFlags
      .filter((flag) => flag.urgency === urgency)
      .map(({ finding, action }) => ({
        finding: closed(finding),
        ...(urgency === 'now' ? { action: closed(action) } : {}),
      }));
    return flags.length === 0 ? [] : [{ urgency, words, flags }];
  });
}

/** The cautions of an item as one run of sentences. */
export const cautionWords = ({ cautions }: FormItem): string => cautions.map(closed).join(' ');

/** Said of every sensitive item. */
export const sensitiveWords =
  'Sensitive: only where indicated, trained and permitted; explicit consent; chaperone offered; right to stop.';
