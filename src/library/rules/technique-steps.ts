import { wordsOf } from '../readability.ts';
import { roughText } from '../rough-text.ts';
import { manoeuvresOf, type Rule } from './rule.ts';

const fewest = 3;
const mostWords = 30;

/** A technique can be followed at the bedside. */
export const techniqueSteps: Rule = {
  name: 'technique-steps',
  description: `A technique has at least ${fewest} steps of at most ${mostWords} words each.`,
  check(content, report) {
    for (const one of manoeuvresOf(content)) {
      const { id, scope } = one.value;
      if (scope !== 'preparation' && one.technique.length > 0 && one.technique.length < fewest) {
        report(
          one.heading('Technique'),
          `The technique of ${id} has ${one.technique.length} steps; at least ${fewest} are wanted, one action each.`,
        );
      }
      for (const { line, at } of one.technique) {
        const count = wordsOf(roughText(line)).length;
        if (count > mostWords)
          report(
            at,
            `This step has ${count} words; at most ${mostWords} can be taken in at the bedside. Split it into two steps.`,
          );
      }
    }
  },
};
