import type { Evidence, Ratio } from '../../schemas/evidence.ts';
import { byId } from './references.ts';

/**
 * What a finding does to how likely a condition is, in words before numbers:
 * "Neck veins judged raised: heart failure is more likely, LR+ 5.1 (3.2–7.9); when absent, less likely, LR− 0.66."
 * Figures of sources that disagree follow.
 */
export function evidenceText(entry: Evidence, all: readonly Evidence[]): string {
  const others = entry.disagreesWith
    .map((id) => byId(all, id))
    .map((other) => `${figures(other)}${apart(entry, other)} in ${lowerFirst(other.population)}`);
  const disagreement =
    others.length === 0 ? '' : ` ${others.length === 1 ? 'Another source' : 'Other sources'}: ${others.join('; ')}.`;
  return `${entry.finding}: ${parts(entry).join('; ')}.${disagreement}`;
}

/** A ratio with its interval: "5.1 (3.2–7.9)". */
export function ratioText({ value, low, high }: Ratio): string {
  return low === undefined || high === undefined ? String(value) : `${value} (${low}–${high})`;
}

/** The likelihood ratios alone: "LR+ 2.7 (2.0–3.6), LR− 0.43". */
export function figures(entry: Evidence): string {
  const present = entry.present ? [`LR+ ${ratioText(entry.present)}`] : [];
  const absent = entry.absent ? [`LR− ${ratioText(entry.absent)}`] : [];
  return [...present, ...absent].join(', ');
}

function parts({ condition, present, absent }: Evidence): string[] {
  const first = present ? [`${condition} is ${direction(present)}, LR+ ${ratioText(present)}`] : [];
  if (!absent) return first;
  const subject = present ? 'when absent,' : `when absent, ${condition} is`;
  return [...first, `${subject} ${direction(absent)}, LR− ${ratioText(absent)}`];
}

/** Another condition is named, so that a figure for a tighter stenosis does not pass as one for any stenosis. */
const apart = (entry: Evidence, other: Evidence): string =>
  other.condition === entry.condition ? '' : ` for ${other.condition}`;

/**
 * Which way a ratio points. An interval that holds 1 cannot tell; without an interval, a ratio within
 * about a quarter of 1 moves the odds too little to say so (a marginal change, Jaeschke et al. 1994).
 */
function direction({ value, low, high }: Ratio): string {
  const known = low !== undefined && high !== undefined;
  if (known && low <= 1 && high >= 1) return 'not clearly more or less likely';
  if (!known && value >= 0.8 && value <= 1.25) return 'about as likely as before';
  return value > 1 ? 'more likely' : 'less likely';
}

function lowerFirst(text: string): string {
  return /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}
