import { urgency } from '../../schemas/common.ts';
import type { Line } from '../../schemas/inline.ts';
import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre, RedFlag } from '../../schemas/manoeuvre.ts';
import { plainText } from '../text/plain.ts';
import { byId } from '../text/references.ts';
import type { Passage } from './record.ts';

/**
 * What a manoeuvre is for and what is found count most; how it is done and what the figures are about count half;
 * what else is said, a quarter. Likelihood ratios are left out: nobody types them, and they read badly in a quotation.
 */
export function manoeuvrePassages(one: Manoeuvre, library: Library): Passage[] {
  const passage = (weight: number, lines: readonly Line[]): Passage => ({
    text: lines
      .map((line) =>
        plainText(
          line.filter(({ type }) => type !== 'evidence'),
          library,
        ).trim(),
      )
      .join(' '),
    weight,
  });
  return [
    passage(3, [one.aim]),
    passage(1, one.abnormal),
    { text: one.redFlags.map((flag) => flagText(flag, library)).join(' '), weight: 1 },
    passage(1, one.normal),
    { text: one.records.map(({ label }) => `${label}.`).join(' '), weight: 1 },
    { text: evidenceSubjects(one, library), weight: 0.5 },
    passage(0.5, one.technique),
    passage(0.25, [...one.cautions, ...one.errors, ...one.adaptations]),
  ].filter(({ text }) => text !== '');
}

const flagText = ({ finding, action }: RedFlag, library: Library): string =>
  `${plainText(finding, library)}: ${plainText(action, library)}`;

function evidenceSubjects(one: Manoeuvre, library: Library): string {
  const ids = [...one.abnormal, ...one.normal].flat().flatMap((part) => (part.type === 'evidence' ? [part.id] : []));
  const entries = [...new Set(ids)].map((id) => byId(library.evidence, id));
  return entries.map(({ finding, condition }) => `${finding}: ${condition}.`).join(' ');
}

/** Urgencies in words, most urgent first, with how many flags there are of each: "2 now, 1 today". */
export function flagsText(flags: readonly RedFlag[]): string {
  return urgency.options
    .map((name) => ({ name, count: flags.filter((flag) => flag.urgency === name).length }))
    .filter(({ count }) => count > 0)
    .map(({ name, count }) => `${count} ${name}`)
    .join(', ');
}
