import type { Form, FormItem } from '../../../schemas/form.ts';
import { notPartTitle, omissionsOf, omittedItem } from '../clinic/not-part.ts';
import { cautionSentences, type FlagGroup, flagGroups, sensitiveWords } from './guidance.ts';
import type { ItemPosition, Numbered } from './numbering.ts';

/** All that the annex says of one item. */
export interface AnnexEntry {
  /** Number that the item has on the form; none for what is done before or after it. */
  number?: number;
  title: string;
  position: ItemPosition;
  sensitive?: string;
  cautions: string[];
  flags: FlagGroup[];
}

/** A section of the annex, in the form's order. */
export interface AnnexSection {
  title: string;
  entries: AnnexEntry[];
}

const hasSafety = ({ cautions, redFlags, sensitive }: FormItem): boolean =>
  cautions.length > 0 || redFlags.length > 0 || sensitive;

function entry(item: FormItem, { numberOf, positionOf }: Numbered): AnnexEntry {
  const number = numberOf.get(item.manoeuvre);
  return {
    ...(number === undefined ? {} : { number }),
    title: item.title,
    position: positionOf(item),
    ...(item.sensitive ? { sensitive: sensitiveWords } : {}),
    cautions: cautionSentences(item),
    flags: flagGroups(item),
  };
}

/** What a clinic's form leaves out hides no caution and no red flag; it stands nowhere in the order. */
function notPartSection(form: Form, numbered: Numbered): AnnexSection[] {
  const items = omissionsOf(form)
    .filter(({ whole }) => whole)
    .map(omittedItem);
  const entries = items
    .filter(hasSafety)
    .map((item) => ({ ...entry(item, numbered), position: { words: '', marks: [] } }));
  return entries.length === 0 ? [] : [{ title: notPartTitle, entries }];
}

/** Every caution and every red flag of the form in full, with what to do; sections without any are left out. */
export function annexOf(form: Form, numbered: Numbered): AnnexSection[] {
  const held = form.sections.flatMap(({ title, items }) => {
    const entries = items.filter(hasSafety).map((item) => entry(item, numbered));
    return entries.length === 0 ? [] : [{ title, entries }];
  });
  return [...held, ...notPartSection(form, numbered)];
}
