import type { ManoeuvreDraft } from '../content.ts';
import { roughText } from '../rough-text.ts';
import { fleschKincaidGrade } from '../readability.ts';
import { manoeuvresOf, type Rule } from './rule.ts';

/** Highest Flesch–Kincaid grade of what is said to a patient. */
export const highestGrade = 6;

/** Patients can follow what is said. */
export const patientWording: Rule = {
  name: 'patient-wording',
  description: `Each line told to the patient ends in a stop, and the joined lines read at Flesch–Kincaid grade ${highestGrade} or below.`,
  check(content, report) {
    for (const one of manoeuvresOf(content)) {
      for (const { line, at } of one.tell) {
        const text = roughText(line);
        if (!/[.?!]$/.test(text))
          report(at, `The line "${text}" does not end in a stop. End every line told to the patient with . ? or !`);
      }
      checkGrade(one, report);
    }
  },
};

function checkGrade(one: ManoeuvreDraft, report: Parameters<Rule['check']>[1]): void {
  const lines = one.tell.map(({ line, at }) => ({ at, text: roughText(line) }));
  const grade = fleschKincaidGrade(lines.map(({ text }) => text).join(' '));
  if (grade <= highestGrade) return;
  const hardest = lines.reduce((worst, line) =>
    fleschKincaidGrade(line.text) > fleschKincaidGrade(worst.text) ? line : worst,
  );
  report(
    hardest.at,
    `What the patient is told in ${one.value.id} reads at grade ${grade.toFixed(1)} (Flesch–Kincaid); at most ${highestGrade} is wanted. This is its hardest line, grade ${fleschKincaidGrade(hardest.text).toFixed(1)}: use shorter sentences and shorter words.`,
  );
}
