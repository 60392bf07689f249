import type { Urgency } from '../../schemas/common.ts';
import type { FormItem } from '../../schemas/form.ts';

const urgencyWords: { [U in Urgency]: string } = {
  now: 'act now',
  today: 'same-day senior review',
  soon: 'appointment within the days that the local protocol gives',
};

/** What must be read before the hands move: how it can hurt and what cannot wait. */
export interface SafetyLine {
  /** linkId of the line: `<manoeuvre>.sensitive`, `.flag-1`, `.caution-1` and so on. */
  linkId: string;
  text: string;
}

/** The safety lines of an item in the order shown: consent, red flags, cautions. None may be hidden. */
export function safetyLines(item: FormItem): SafetyLine[] {
  const flags = item.redFlags.map(
    ({ urgency, finding, action }) => `Red flag, ${urgencyWords[urgency]}: ${closed(finding)} ${action}`,
  );
  const cautions = item.cautions.map((caution) => `Caution: ${caution}`);
  return [...sensitiveLines(item), ...numbered(item, 'flag', flags), ...numbered(item, 'caution', cautions)];
}

function sensitiveLines({ manoeuvre, sensitive }: FormItem): SafetyLine[] {
  if (!sensitive) return [];
  const text =
    'Sensitive examination: only where indicated, trained and permitted. Explicit consent, a chaperone offered, the right to stop.';
  return [{ linkId: `${manoeuvre}.sensitive`, text }];
}

function numbered({ manoeuvre }: FormItem, part: string, texts: readonly string[]): SafetyLine[] {
  return texts.map((text, index) => ({ linkId: `${manoeuvre}.${part}-${index + 1}`, text }));
}

/** The sentence with a stop at its end. */
function closed(sentence: string): string {
  return /[.!?]$/.test(sentence) ? sentence : `${sentence}.`;
}
