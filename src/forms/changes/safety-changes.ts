import type { FormItem } from '../../../schemas/form.ts';
import { type Change, changed, type Subject } from './change.ts';

type Flag = FormItem['redFlags'][number];

/** What of an item's cautions and red flags changed. One that is lost is as large a change as a lost answer. */
export function safetyChanges(subject: Subject, before: FormItem, after: FormItem): Change[] {
  return [
    ...sensitiveChange(subject, before.sensitive, after.sensitive),
    ...lineChanges(subject, 'caution', before.cautions, after.cautions),
    ...flagChanges(subject, before.redFlags, after.redFlags),
  ];
}

function sensitiveChange(subject: Subject, before: boolean, after: boolean): Change[] {
  const words = (sensitive: boolean): string => (sensitive ? 'sensitive' : 'not sensitive');
  return changed(subject, before ? 'major' : 'minor', 'consent and chaperone changed', words(before), words(after));
}

/** Lines lost, new and reworded: what stays word for word is set aside, the rest is compared in its order. */
export function lineChanges(
  subject: Subject,
  noun: string,
  before: readonly string[],
  after: readonly string[],
): Change[] {
  const old = before.filter((line) => !after.includes(line));
  const now = after.filter((line) => !before.includes(line));
  const both = Math.min(old.length, now.length);
  return [
    ...old.slice(0, both).flatMap((line, index) => changed(subject, 'patch', `${noun} reworded`, line, now[index])),
    ...old.slice(both).map((line) => ({ size: 'major' as const, ...subject, words: `${noun} removed: ${line}` })),
    ...now.slice(both).map((line) => ({ size: 'minor' as const, ...subject, words: `${noun} added: ${line}` })),
  ];
}

function flagChanges(subject: Subject, before: readonly Flag[], after: readonly Flag[]): Change[] {
  const findings = (flags: readonly Flag[]): string[] => flags.map(({ finding }) => finding);
  return [
    ...lineChanges(subject, 'red flag', findings(before), findings(after)),
    ...pairs(before, after).flatMap(([old, now]) => [
      ...changed(subject, 'major', `urgency of the red flag “${now.finding}” changed`, old.urgency, now.urgency),
      ...changed(subject, 'patch', `what to do for the red flag “${now.finding}” reworded`, old.action, now.action),
    ]),
  ];
}

/** Flags with the same finding, then those whose finding was reworded, in their order. */
function pairs(before: readonly Flag[], after: readonly Flag[]): [Flag, Flag][] {
  const same = after.flatMap((now): [Flag, Flag][] => {
    const old = before.find(({ finding }) => finding === now.finding);
    return old === undefined ? [] : [[old, now]];
  });
  const old = before.filter((flag) => !same.some(([each]) => each === flag));
  const now = after.filter((flag) => !same.some(([, each]) => each === flag));
  return [...same, ...old.flatMap((flag, index): [Flag, Flag][] => (now[index] ? [[flag, now[index]]] : []))];
}
