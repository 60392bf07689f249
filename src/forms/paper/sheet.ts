import type { Form, FormField, FormItem, FormSection } from '../../../schemas/form.ts';
import type { Library } from '../../../schemas/library.ts';
import { positionMarkSvg } from '../../figures/position-mark.ts';
import { reasonOptions } from '../answer-options.ts';
import { cautionWords, type FlagGroup, flagGroups, sensitiveWords } from './guidance.ts';
import { type Row, rowsOf } from './rows.ts';
import { toldRows } from './sheet-fields.ts';

/** Paper that a form is set on. */
export type Paper = 'a4' | 'letter';

interface SheetItem {
  id: string;
  title: string;
  /** Position in words, and its mark: "supine", or "supine, then left side". */
  position: { words: string; marks: string[] };
  sensitive?: string;
  cautions: string;
  flags: FlagGroup[];
  rows: Row[];
}

interface SheetSection {
  title: string;
  /** Scales of the section with each grade in words, once. */
  scales: { title: string; grades: string[]; source?: string }[];
  items: SheetItem[];
}

/** What the template sets: plain text and addresses of fields, nothing that it must work out. */
export interface Sheet {
  paper: Paper;
  title: string;
  purpose: string;
  leavesOut: string;
  copyright: string;
  /** "adult-screening 1.0.0, draft". */
  edition: string;
  date: string;
  /** First eight characters of the content hash: a paper copy can be traced by it. */
  code: string;
  reasons: string[];
  told: number[];
  /** Marks by position id. */
  marks: { [position: string]: string };
  sections: SheetSection[];
}

const positionWords = (library: Library, id: string): string =>
  id === 'any' ? 'any position' : (library.positions.find((each) => each.id === id)?.label ?? id).toLowerCase();

function sheetItem(library: Library, item: FormItem): SheetItem {
  const words = item.positions.map((id) => positionWords(library, id)).join(', then ');
  return {
    id: item.manoeuvre,
    title: item.title,
    position: { words, marks: item.positions },
    ...(item.sensitive ? { sensitive: sensitiveWords } : {}),
    cautions: cautionWords(item),
    flags: flagGroups(item),
    rows: rowsOf(item),
  };
}

function scaleKey({
  scaleTitle,
  options,
  source,
}: Extract<FormField, { kind: 'scale' }>): SheetSection['scales'][number] {
  const grades = options.map(({ display }) => display);
  return { title: scaleTitle, grades, ...(source === undefined ? {} : { source }) };
}

function scalesOf({ items }: FormSection): SheetSection['scales'] {
  const fields = items.flatMap((item) => item.fields).filter((field) => field.kind === 'scale');
  const scales = [...Map.groupBy(fields, ({ scale }) => scale).values()];
  return scales.flatMap(([first]) => (first === undefined ? [] : [scaleKey(first)]));
}

const section = (library: Library, part: FormSection): SheetSection => ({
  title: part.title,
  scales: scalesOf(part),
  items: part.items.map((item) => sheetItem(library, item)),
});

function marksOf(form: Form): Sheet['marks'] {
  const ids = form.sections.flatMap(({ items }) => items.flatMap(({ positions }) => positions));
  return Object.fromEntries([...new Set(ids)].map((id) => [id, positionMarkSvg(id)]));
}

const statusWords = { draft: ', draft', active: '', retired: ', withdrawn' } as const;

/** The sheet of a form. Throws RangeError for a position without a mark. */
export function sheetOf(form: Form, paper: Paper, library: Library): Sheet {
  const { title, purpose, leavesOut, copyright, date } = form;
  return {
    ...{ paper, title, purpose, leavesOut, copyright, date },
    edition: `${form.id} ${form.version}${statusWords[form.status]}`,
    code: form.hash.slice(0, 8),
    reasons: reasonOptions.map(({ label }) => label.toLowerCase()),
    told: toldRows,
    marks: marksOf(form),
    sections: form.sections.map((part) => section(library, part)),
  };
}
