import type { Form } from '../../schemas/form.ts';
import { positionMarkSvg } from '../figures/position-mark.ts';
import { fieldAddress } from '../pdf/form/field-address.ts';
import { editionWords } from './edition.ts';
import {
  type Observation,
  observationOf,
  type WatchedItem,
  type WatchedSection,
  type WatchSheet,
} from './observation.ts';
import { itemFieldNames, sheetFieldName } from './observation-fields.ts';
import { criticalWords, headLines, judgement, prompted, ratings, remarks, watchNotice } from './observation-words.ts';
import type { Paper } from './paper/sheet.ts';

/** What the template sets of an item: its words, and the addresses of its fields. */
interface SetItem extends Pick<WatchedItem, 'number' | 'title' | 'critical' | 'forbids'> {
  id: string;
  /** Position in words, where it is another than that of the item before. */
  position?: string;
  marks: string[];
  prompted: string;
  how: string;
}

interface SetSection {
  title: string;
  /** Its position in words, and the mark of it. */
  position: string;
  mark: string;
  items: SetItem[];
}

interface SetSheet {
  part: number;
  sections: SetSection[];
  head: { label: string; to: string }[];
  judgement: { label: string; to: string }[];
  remarks: { label: string; to: string }[];
}

/** The observation sheets of a form as their template takes them: plain text and addresses of fields. */
export function observationSheet(form: Form, paper: Paper): object {
  const observation = observationOf(form);
  const { title, date, copyright, warning } = observation;
  return {
    ...{ paper, title: `${title}, watched`, edition: editionWords(form), code: form.hash.slice(0, 8), date, copyright },
    ...(warning === undefined ? {} : { warning }),
    ...{ notice: watchNotice, critical: criticalWords, ratings, prompted, judgement: judgementWords },
    marks: Object.fromEntries(positionIds(observation).map((id) => [id, positionMarkSvg(id)])),
    sheets: observation.sheets.map((sheet) => setSheet(form, sheet)),
  };
}

const judgementWords = { label: judgement.label, meaning: judgement.meaning };

function positionIds({ sheets }: Observation): string[] {
  const items = sheets.flatMap(({ sections }) => sections.flatMap((section) => section.items));
  return [...new Set(items.flatMap(({ positions }) => positions))];
}

function setSheet(form: Form, sheet: WatchSheet): SetSheet {
  const line = ({ code, label }: { code: string; label: string }) => ({
    label,
    to: fieldAddress(sheetFieldName(sheet, code)),
  });
  return {
    part: sheet.part,
    sections: sheet.sections.map((section) => setSection(form, section)),
    head: headLines.map(line),
    judgement: judgement.options.map(({ label }, index) => ({
      label,
      to: fieldAddress(sheetFieldName(sheet, 'judgement'), index),
    })),
    remarks: remarks.map(line),
  };
}

function setSection(form: Form, { title, items }: WatchedSection): SetSection {
  const [first] = items;
  const mark = first?.positions[0] ?? 'any';
  const own = positionText(form, first?.positions ?? []);
  return { title, position: own, mark, items: items.map((item, index) => setItem(form, item, items[index - 1])) };
}

function setItem(form: Form, item: WatchedItem, before: WatchedItem | undefined): SetItem {
  const { manoeuvre: id, number, title, critical, forbids, positions } = item;
  const names = itemFieldNames(item);
  const words = positionText(form, positions);
  const moved = before !== undefined && words !== positionText(form, before.positions);
  return {
    ...{ id, number, title, critical, forbids },
    ...(moved ? { position: words } : {}),
    marks: ratings.map((_, index) => fieldAddress(names.mark, index)),
    prompted: fieldAddress(names.prompted),
    how: fieldAddress(names.how),
  };
}

function positionText({ positions: labels }: Form, ids: readonly string[]): string {
  const words = ids.map((id) => (id === 'any' ? 'any position' : (labels.find((one) => one.id === id)?.label ?? id)));
  return words.map((label) => label.toLowerCase()).join(', then ');
}
