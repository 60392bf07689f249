import type { Urgency } from '../../schemas/common.ts';
import type { FormItem } from '../../schemas/form.ts';

const urgencyWords: { [U in Urgency]: string } = {
  now: 'act now',
  today: 'same-day senior review',
  soon: 'appointment within the days that the local protocol gives',
};

/** What must be read before the hands move: how it can hurt and what cannot wait. */
export interface SafetyLine {
  /** linkId of the line: `<manoeuvre>.sensitive`, `.flag-1`, `.caution-1` and so on, `.note`. */
  linkId: string;
  kind: 'sensitive' | 'flag' | 'caution' | 'local';
  /** What kind of line it is, in words, so that nobody takes it for anything else. */
  lead: string;
  words: string;
  /** Lead and words together. */
  text: string;
}

/** The safety lines of an item in the order shown: consent, red flags, cautions, a clinic's own note. None may be hidden. */
export function safetyLines({ manoeuvre, sensitive, redFlags, cautions, localNote }: FormItem): SafetyLine[] {
  return [
    ...(sensitive ? [safetyLine(`${manoeuvre}.sensitive`, 'sensitive', 'Sensitive examination', consent)] : []),
    ...redFlags.map(({ urgency, finding, action }, index) =>
      safetyLine(
        `${manoeuvre}.flag-${index + 1}`,
        'flag',
        `Red flag, ${urgencyWords[urgency]}`,
        `${closed(finding)} ${action}`,
      ),
    ),
    ...cautions.map((caution, index) => safetyLine(`${manoeuvre}.caution-${index + 1}`, 'caution', 'Caution', caution)),
    ...(localNote === undefined
      ? []
      : [safetyLine(`${manoeuvre}.note`, 'local', `Local note, ${localNote.by}`, localNote.words)]),
  ];
}

const consent =
  'only where indicated, trained and permitted. Explicit consent, a chaperone offered, the right to stop.';

function safetyLine(linkId: string, kind: SafetyLine['kind'], lead: string, words: string): SafetyLine {
  return { linkId, kind, lead, words, text: `${lead}: ${words}` };
}

/** The sentence with a stop at its end. */
function closed(sentence: string): string {
  return /[.!?]$/.test(sentence) ? sentence : `${sentence}.`;
}
