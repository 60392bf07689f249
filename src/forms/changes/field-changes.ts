import type { FormField } from '../../../schemas/form.ts';
import { type Change, changed, type Subject } from './change.ts';

type Quantity = Extract<FormField, { kind: 'quantity' }>;
type Optioned = Extract<FormField, { options: unknown }>;
type Option = Optioned['options'][number];

/** What of a field changed. A field of another kind has lost its answers: nothing more is compared then. */
export function fieldChanges(before: FormField, after: FormField): Change[] {
  const subject = { where: after.linkId, what: after.label };
  if (before.kind !== after.kind) return changed(subject, 'major', 'kind of answer changed', before.kind, after.kind);
  return [
    ...changed(subject, 'major', 'belongs to another manoeuvre', before.manoeuvre, after.manoeuvre),
    ...changed(subject, 'major', 'belongs to another record', before.record, after.record),
    ...changed(subject, 'major', 'side changed', before.side, after.side),
    ...codeChanges(subject, before, after),
    ...ofKind(subject, before, after),
    ...changed(subject, 'patch', 'reworded', before.label, after.label),
    ...changed(subject, 'patch', 'source reworded', before.source, after.source),
  ];
}

/** A code given where there was none is new; another code, or none any more, means something else to a record system. */
function codeChanges(subject: Subject, before: FormField, after: FormField): Change[] {
  return [
    ...changed(subject, before.code === undefined ? 'minor' : 'major', 'code changed', before.code, after.code),
    ...(before.code === after.code
      ? changed(subject, 'patch', 'name of its code reworded', before.codeDisplay, after.codeDisplay)
      : []),
  ];
}

function ofKind(subject: Subject, before: FormField, after: FormField): Change[] {
  if (before.kind === 'quantity' && after.kind === 'quantity') return quantityChanges(subject, before, after);
  if ('options' in before && 'options' in after) return optionedChanges(subject, before, after);
  if (before.kind === 'finding' && after.kind === 'finding') {
    return [
      ...changed(subject, 'major', 'linkId of its detail changed', before.detail, after.detail),
      ...changed(subject, 'major', 'linkId of its reason changed', before.reason, after.reason),
      ...changed(subject, 'patch', 'words for normal reworded', before.normal, after.normal),
    ];
  }
  return [];
}

function quantityChanges(subject: Subject, before: Quantity, after: Quantity): Change[] {
  return [
    ...changed(subject, 'major', 'unit changed', before.unit, after.unit),
    ...limitChange(subject, 'smallest number accepted', before.min, after.min, after.min > before.min),
    ...limitChange(subject, 'largest number accepted', before.max, after.max, after.max < before.max),
    ...changed(subject, 'patch', 'unit reworded', before.unitLabel, after.unitLabel),
    ...changed(subject, 'patch', 'normal range reworded', before.normal, after.normal),
  ];
}

/** A narrower range refuses what was accepted before. */
function limitChange(subject: Subject, what: string, before: number, after: number, narrower: boolean): Change[] {
  return changed(subject, narrower ? 'major' : 'minor', `${what} ${narrower ? 'narrowed' : 'widened'}`, before, after);
}

function optionedChanges(subject: Subject, before: Optioned, after: Optioned): Change[] {
  const scales = before.kind === 'scale' && after.kind === 'scale' ? [before, after] : [];
  const [old, now] = scales;
  return [
    ...changed(subject, 'major', 'scale changed', old?.scale, now?.scale),
    ...changed(subject, 'patch', 'name of the scale reworded', old?.scaleTitle, now?.scaleTitle),
    ...optionChanges(subject, before.options, after.options),
  ];
}

function optionChanges(subject: Subject, before: readonly Option[], after: readonly Option[]): Change[] {
  const find = (options: readonly Option[], code: string): Option | undefined =>
    options.find((option) => option.code === code);
  const removed = before.filter(({ code }) => find(after, code) === undefined);
  const added = after.filter(({ code }) => find(before, code) === undefined);
  return [
    ...removed.map((option) => ({ size: 'major' as const, ...subject, words: `answer removed: ${option.display}` })),
    ...added.map((option) => ({ size: 'minor' as const, ...subject, words: `answer added: ${option.display}` })),
    ...after.flatMap((option) => sameOption(subject, find(before, option.code), option)),
    ...orderChange(subject, before, after),
  ];
}

function sameOption(subject: Subject, before: Option | undefined, after: Option): Change[] {
  if (before === undefined) return [];
  const normal = (option: Option): string => (option.normal ? 'normal' : 'not normal');
  return [
    ...changed(subject, 'major', `meaning of the answer ${after.display} changed`, normal(before), normal(after)),
    ...changed(subject, 'patch', 'answer reworded', before.display, after.display),
  ];
}

function orderChange(subject: Subject, before: readonly Option[], after: readonly Option[]): Change[] {
  const codes = (options: readonly Option[], others: readonly Option[]): string =>
    options
      .filter(({ code }) => others.some((other) => other.code === code))
      .map(({ code }) => code)
      .join(', ');
  return changed(subject, 'patch', 'order of the answers changed', codes(before, after), codes(after, before));
}
