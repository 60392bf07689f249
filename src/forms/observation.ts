import type { Form, FormItem, FormSection } from '../../schemas/form.ts';

/** Most items that one observer can judge with care at a sitting. Source: common practice. */
export const mostWatched = 25;

/** One manoeuvre to watch. */
export interface WatchedItem extends Pick<FormItem, 'manoeuvre' | 'title' | 'positions' | 'sensitive'> {
  /** Number on the sheet, from 1, the same for every observer. */
  number: number;
  /** Whether a wrong hand, or a sign passed over, can do lasting harm: {@link isSafetyCritical}. */
  critical: boolean;
  /** The cautions of a critical item that forbid or, where none does, all of them, to be read before it is watched. */
  forbids: string[];
}

/** Items of one system, in the form's order. */
export interface WatchedSection extends Pick<FormSection, 'linkId' | 'title' | 'position'> {
  items: WatchedItem[];
}

/** What one observer fills in at one sitting, with a judgement of its own. */
export interface WatchSheet {
  /** Which of how many, from 1. */
  part: number;
  sections: WatchedSection[];
}

/** An examination as it is watched: the items of a form, in its order, in sheets of at most {@link mostWatched}. */
export interface Observation extends Pick<Form, 'id' | 'title' | 'version' | 'status' | 'date' | 'hash' | 'copyright'> {
  count: number;
  /** Said where the form holds more than one observer should watch at once. */
  warning?: string;
  sheets: [WatchSheet, ...WatchSheet[]];
}

/** The observation sheets of a form, from the same value as every other format of it. */
export function observationOf(form: Form): Observation {
  const { id, title, version, status, date, hash, copyright } = form;
  const sections = watchedSections(form);
  const count = sections.reduce((total, { items }) => total + items.length, 0);
  const [first, ...more] = packed(sections).map((own, index) => ({ part: index + 1, sections: own }));
  if (first === undefined) throw new Error(`The form "${id}" holds nothing to watch.`);
  const warning = count > mostWatched ? { warning: warningWords(count, more.length + 1) } : {};
  return { id, title, version, status, date, hash, copyright, count, ...warning, sheets: [first, ...more] };
}

/** Every item of an observation in its order. */
export function watchedItems({ sheets }: Observation): WatchedItem[] {
  return sheets.flatMap(({ sections }) => sections.flatMap(({ items }) => items));
}

/** Items without which no touch is safe or lawful. */
const alwaysCritical = ['introduce-and-consent', 'finish-and-explain'];

/**
 * The rule for what is safety-critical: the item is a sensitive examination; or the patient stands and can fall; or it is
 * consent, or helping the patient up at the end; or it can show what must be acted on now (a red flag `now`) and one of
 * its cautions says "never" or "stop". An item with cautions that only limit is not.
 */
export function isSafetyCritical({ manoeuvre, sensitive, positions, redFlags, cautions }: FormItem): boolean {
  return (
    sensitive ||
    positions.includes('standing') ||
    alwaysCritical.includes(manoeuvre) ||
    (redFlags.some(({ urgency }) => urgency === 'now') && cautions.some(forbids))
  );
}

const forbids = (caution: string): boolean => /\b(never|stop)\b/i.test(caution);

function watchedSections({ sections }: Form): WatchedSection[] {
  let number = 0;
  return sections.map(({ linkId, title, position, items }) => ({
    ...{ linkId, title, position },
    items: items.map((item) => watchedItem(item, (number += 1))),
  }));
}

function watchedItem(item: FormItem, number: number): WatchedItem {
  const { manoeuvre, title, positions, sensitive } = item;
  const critical = isSafetyCritical(item);
  return {
    manoeuvre,
    title,
    positions,
    sensitive,
    number,
    critical,
    forbids: critical ? toBeRead(item.cautions) : [],
  };
}

/** The cautions that forbid or, where none does, all of them. */
function toBeRead(cautions: readonly string[]): string[] {
  const forbidding = cautions.filter(forbids);
  return forbidding.length > 0 ? forbidding : [...cautions];
}

function warningWords(count: number, sheets: number): string {
  return `${count} items are more than the ${mostWatched} that one observer can judge with care at a sitting. They are parted into ${sheets} sheets: choose one for a sitting, or share them out.`;
}

/** Sections in as few sheets as their order allows, as even as that allows. */
function packed(all: readonly WatchedSection[]): WatchedSection[][] {
  const sections = all.flatMap(parted);
  const fewest = filled(sections, mostWatched);
  for (let most = 1; most < mostWatched; most += 1) {
    const even = filled(sections, most);
    if (even.length === fewest.length) return even;
  }
  return fewest;
}

/** Fills sheet after sheet; a section longer than `most` stands alone on one. */
function filled(sections: readonly WatchedSection[], most: number): WatchedSection[][] {
  const sheets: WatchedSection[][] = [];
  let room = 0;
  for (const section of sections) {
    if (section.items.length > room) {
      sheets.push([]);
      room = most;
    }
    sheets.at(-1)?.push(section);
    room -= section.items.length;
  }
  return sheets;
}

/** A section that is longer than any sheet, in parts. */
function parted(section: WatchedSection): WatchedSection[] {
  const { items, linkId, title } = section;
  if (items.length <= mostWatched) return [section];
  const starts = Array.from({ length: Math.ceil(items.length / mostWatched) }, (_, index) => index * mostWatched);
  return starts.map((start, index) => ({
    ...section,
    ...(index === 0 ? {} : { linkId: `${linkId}.${index + 1}`, title: `${title}, continued` }),
    items: items.slice(start, start + mostWatched),
  }));
}
