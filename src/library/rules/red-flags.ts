import { manoeuvresOf, type Rule } from './rule.ts';

/** Every examination says what cannot wait, or why nothing here can. */
export const redFlags: Rule = {
  name: 'red-flag',
  description: 'An examination has at least one red flag, or the reason why it has none, never both.',
  check(content, report) {
    for (const one of manoeuvresOf(content)) {
      const { id, scope, redFlags: flags, noRedFlag } = one.value;
      const at = one.heading('Red flags');
      if (flags.length > 0 && noRedFlag) report(at, `${id} has red flags and <NoRedFlag>. Remove one of them.`);
      if (scope !== 'preparation' && flags.length === 0 && !noRedFlag) {
        report(
          at,
          `${id} has no red flag. Write <RedFlag urgency="…" finding="…">What to do.</RedFlag>, or <NoRedFlag reason="…" /> if nothing found here can be urgent.`,
        );
      }
    }
  },
};
