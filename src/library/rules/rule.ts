import type { Content, ManoeuvreDraft, Report } from '../content.ts';
import type { At } from '../faults.ts';

/** One thing that content must obey. A new rule is a new file, listed in index.ts. */
export interface Rule {
  /** Name in faults and in `--json`. */
  name: string;
  /** What must hold, and why, in a sentence. */
  description: string;
  /** Warnings do not fail a check. */
  level?: 'warning';
  check: (content: Content, report: (at: At, message: string) => void) => void;
}

/** Every manoeuvre of the content, with the id of its page. */
export function manoeuvresOf(content: Content): ManoeuvreDraft[] {
  return content.protocols.flatMap((protocol) => protocol.manoeuvres);
}

/** Applies one rule; its faults carry its name. */
export function applyRule(rule: Rule, content: Content, report: Report): void {
  rule.check(content, (at, message) => report(at, rule.name, message));
}
