import type { Form, FormItem, FormSection } from '../../../schemas/form.ts';
import { positionMarkSvg } from '../../figures/position-mark.ts';
import { reasonOptions } from '../answer-options.ts';
import { notPartTitle, omissionsOf, omissionWords } from '../clinic/not-part.ts';
import { type SheetClinic, sheetClinic } from '../clinic/sheet-contacts.ts';
import { editionWords, shortCode } from '../edition.ts';
import { type Charts, chartsOf } from './charts.ts';
import { type AnnexSection, annexOf } from './annex.ts';
import { cautionSentences, nowFindings, sensitiveWords } from './guidance.ts';
import { isPrinted, type ItemPosition, type Numbered, numbered, unprintedItems } from './numbering.ts';
import { type Row, rowsOf } from './rows.ts';
import { longWords } from './long-words.ts';
import { newScales, type ScaleKey } from './scale-keys.ts';
import { toldRows } from './sheet-fields.ts';

/** Paper that a form is set on. */
export type Paper = 'a4' | 'letter';

/** How a form is printed: on one of the papers, or in large print, whose page fits both. */
export const prints = ['a4', 'letter', 'large'] as const;
export type Print = (typeof prints)[number];

interface SheetItem {
  id: string;
  /** Number in the margin, by which the annex is read. */
  number: number;
  title: string;
  /** Words of the title that could be wider than their column. */
  long: string[];
  position: ItemPosition;
  sensitive?: string;
  /** The first caution; the others stand in the annex. */
  caution?: string;
  /** Findings that cannot wait. */
  now: string[];
  /** The clinic's own note. */
  note?: { by: string; words: string };
  /** Scales that the section first asks for here, with each grade in words. */
  scales: ScaleKey[];
  rows: Row[];
}

interface SheetSection {
  title: string;
  items: SheetItem[];
}

/** What the template sets: plain text and addresses of fields, nothing that it must work out. */
export interface Sheet {
  paper: Print;
  title: string;
  purpose: string;
  leavesOut: string;
  /** Signs that must not be missed, most dangerous first. */
  mustNotMiss: string[];
  copyright: string;
  /** "adult-screening 1.0.0, draft". */
  edition: string;
  date: string;
  /** First eight characters of the content hash: a paper copy can be traced by it. */
  code: string;
  reasons: string[];
  /** Findings that cannot wait, of what is done before and after: no item stands for them. */
  unwell: string[];
  told: number[];
  /** Marks by position id. */
  marks: { [position: string]: string };
  /** Figures to mark; none on a form that only measures. */
  charts?: Charts;
  sections: SheetSection[];
  annex: AnnexSection[];
  /** Whose edition prints it, and whom to call there. */
  clinic?: SheetClinic;
  /** What a clinic's form leaves out of the shared one. */
  notPart?: { title: string; items: string[] };
}

function sheetItem(item: FormItem, before: readonly FormItem[], { numberOf, positionOf }: Numbered): SheetItem {
  const [caution] = cautionSentences(item);
  return {
    id: item.manoeuvre,
    number: numberOf.get(item.manoeuvre) ?? 0,
    title: item.title,
    long: longWords(item.title),
    position: positionOf(item),
    ...(item.sensitive ? { sensitive: sensitiveWords } : {}),
    ...(caution === undefined ? {} : { caution }),
    now: nowFindings(item),
    ...(item.localNote === undefined ? {} : { note: item.localNote }),
    scales: newScales(item, before),
    rows: rowsOf(item),
  };
}

function sheetSection(section: FormSection, all: Numbered): SheetSection[] {
  const items = section.items.filter((item) => isPrinted(section, item));
  if (items.length === 0) return [];
  return [{ title: section.title, items: items.map((item, index) => sheetItem(item, items.slice(0, index), all)) }];
}

function marksOf(form: Form): Sheet['marks'] {
  const ids = form.sections.flatMap(({ items }) => items.flatMap(({ positions }) => positions));
  return Object.fromEntries([...new Set(ids)].map((id) => [id, positionMarkSvg(id)]));
}

/** A shared form that a clinic prints says so; the clinic's own bears its name already. */
function printedBy(form: Form): string {
  const { clinic, derivedFrom } = form;
  const owner = clinic === undefined || derivedFrom !== undefined ? '' : `${clinic.short ?? clinic.name}: `;
  return `${owner}${editionWords(form)}`;
}

function notPartOf(form: Form): Pick<Sheet, 'notPart'> {
  const items = omissionsOf(form).map(omissionWords);
  return items.length === 0 ? {} : { notPart: { title: notPartTitle, items } };
}

/** The sheet of a form. Throws RangeError for a position without a mark. */
export function sheetOf(form: Form, paper: Print): Sheet {
  const { title, purpose, leavesOut, mustNotMiss, copyright, date } = form;
  const all = numbered(form);
  const charts = chartsOf(form);
  return {
    ...{ paper, title, purpose, leavesOut, mustNotMiss, copyright, date },
    edition: printedBy(form),
    code: shortCode(form.hash),
    reasons: reasonOptions.map(({ label }) => label.toLowerCase()),
    unwell: unprintedItems(form).flatMap(nowFindings),
    told: toldRows,
    marks: marksOf(form),
    ...(charts !== undefined && { charts }),
    sections: form.sections.flatMap((section) => sheetSection(section, all)),
    annex: annexOf(form, all),
    ...sheetClinic(form),
    ...notPartOf(form),
  };
}
