import type { Form, FormField, FormItem, FormSection } from '../../../schemas/form.ts';
import { type Change, changed, largestFirst, type Subject } from './change.ts';
import { fieldChanges } from './field-changes.ts';
import { lineChanges, safetyChanges } from './safety-changes.ts';

/**
 * What changed from one version of a form to another, the largest changes first.
 * An item or answer removed, or its meaning, type, unit or side changed, is major; added, or a range widened, is minor;
 * words alone are a patch. A caution or red flag that is lost, or more or less urgent, is major too.
 */
export function formChanges(before: Form, after: Form): Change[] {
  return largestFirst([
    ...headChanges(before, after),
    ...sectionChanges(before.sections, after.sections),
    ...itemsChanges(placedItems(before), placedItems(after)),
    ...fieldsChanges(before, after),
  ]);
}

function headChanges(before: Form, after: Form): Change[] {
  const subject: Subject = { where: 'form', what: 'The form' };
  const reworded = (['title', 'purpose', 'leavesOut', 'copyright'] as const).flatMap((key) =>
    changed(subject, 'patch', `${headWords[key]} reworded`, before[key], after[key]),
  );
  return [
    ...changed(subject, 'major', 'permanent address changed', before.url, after.url),
    ...changed(subject, 'patch', 'made from another release of the shared form', originOf(before), originOf(after)),
    ...lineChanges(subject, 'sign that must not be missed', before.mustNotMiss, after.mustNotMiss),
    ...reworded,
    ...positionLabelChanges(before, after),
  ];
}

const originOf = ({ derivedFrom }: Form): string | undefined =>
  derivedFrom && `${derivedFrom.url} ${derivedFrom.version}`;

const headWords = { title: 'title', purpose: 'purpose', leavesOut: 'what it leaves out', copyright: 'copyright' };

function positionLabelChanges(before: Form, after: Form): Change[] {
  return after.positions.flatMap(({ id, label }) => {
    const old = before.positions.find((position) => position.id === id);
    return old === undefined ? [] : changed({ where: id, what: label }, 'patch', 'reworded', old.label, label);
  });
}

function sectionChanges(before: readonly FormSection[], after: readonly FormSection[]): Change[] {
  return after.flatMap(({ linkId, title }) => {
    const old = before.find((section) => section.linkId === linkId);
    return old === undefined
      ? []
      : changed({ where: linkId, what: title }, 'patch', 'title reworded', old.title, title);
  });
}

interface PlacedItem {
  item: FormItem;
  section: FormSection;
}

const placedItems = ({ sections }: Form): PlacedItem[] =>
  sections.flatMap((section) => section.items.map((item) => ({ item, section })));

function itemsChanges(before: readonly PlacedItem[], after: readonly PlacedItem[]): Change[] {
  const find = (all: readonly PlacedItem[], { item }: PlacedItem): PlacedItem | undefined =>
    all.find((each) => each.item.manoeuvre === item.manoeuvre);
  const ids = (all: readonly PlacedItem[], others: readonly PlacedItem[]): string =>
    all.flatMap((one) => (find(others, one) ? [one.item.manoeuvre] : [])).join(', ');
  const order = ids(before, after) === ids(after, before) ? [] : [orderChanged];
  return [
    ...before
      .filter((one) => !find(after, one))
      .map(({ item }) => ({ size: 'major' as const, ...itemSubject(item), words: 'removed' })),
    ...after.flatMap((one) => itemChanges(find(before, one), one)),
    ...order,
  ];
}

const orderChanged: Change = {
  size: 'patch',
  where: 'form',
  what: 'The form',
  words: 'order of the examination changed',
};

const itemSubject = ({ manoeuvre, title }: FormItem): Subject => ({ where: manoeuvre, what: title });

function itemChanges(before: PlacedItem | undefined, { item, section }: PlacedItem): Change[] {
  const subject = itemSubject(item);
  if (before === undefined) return [{ size: 'minor', ...subject, words: 'added' }];
  const old = before.item;
  return [
    ...changed(subject, 'major', 'sides changed', old.sides, item.sides),
    ...changed(subject, 'minor', 'moved to another part', before.section.linkId, section.linkId),
    ...changed(subject, 'minor', 'position changed', old.positions.join(', then '), item.positions.join(', then ')),
    ...safetyChanges(subject, old, item),
    ...changed(subject, 'patch', 'title reworded', old.title, item.title),
    ...changed(subject, 'patch', 'local note changed', old.localNote?.words, item.localNote?.words),
  ];
}

const fieldsOfForm = ({ sections }: Form): FormField[] =>
  sections.flatMap(({ items }) => items.flatMap(({ fields }) => fields));

function fieldsChanges(before: Form, after: Form): Change[] {
  const [old, now] = [fieldsOfForm(before), fieldsOfForm(after)];
  const known = new Map(old.map((field) => [field.linkId, field]));
  const kept = new Set(now.map(({ linkId }) => linkId));
  const removed = old.filter(({ linkId }) => !kept.has(linkId));
  return [
    ...removed.map((field) => ({
      size: 'major' as const,
      where: field.linkId,
      what: field.label,
      words: 'blank removed',
    })),
    ...now.flatMap((field) => {
      const same = known.get(field.linkId);
      if (same !== undefined) return fieldChanges(same, field);
      return [{ size: 'minor' as const, where: field.linkId, what: field.label, words: 'blank added' }];
    }),
  ];
}
