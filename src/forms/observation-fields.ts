import type { FieldSpec } from '../pdf/form/field-spec.ts';
import { type Observation, watchedItems, type WatchedItem, type WatchSheet } from './observation.ts';
import { headLines, judgement, prompted, ratings, remarks } from './observation-words.ts';

/** Names of an item's three fields in the PDF. */
export const itemFieldNames = ({ manoeuvre }: Pick<WatchedItem, 'manoeuvre'>) =>
  ({ mark: `mark_${manoeuvre}`, how: `how_${manoeuvre}`, prompted: `prompted_${manoeuvre}` }) as const;

/** Name of a field that each sheet has of its own. */
export const sheetFieldName = ({ part }: Pick<WatchSheet, 'part'>, code: string): string => `sheet-${part}_${code}`;

/** The fields of the PDF: three an item, and those of each sheet. */
export function observationFields(observation: Observation): FieldSpec[] {
  return [...watchedItems(observation).flatMap(itemFields), ...observation.sheets.flatMap(sheetFields)];
}

const shown = (options: readonly { code: string; label: string }[]) =>
  options.map(({ code, label }) => ({ code, display: label }));

function itemFields(item: WatchedItem): FieldSpec[] {
  const names = itemFieldNames(item);
  const title = `${item.number} ${item.title}`;
  return [
    { kind: 'radio', name: names.mark, tooltip: title, options: shown(ratings) },
    { kind: 'tick', name: names.prompted, tooltip: `${title}: ${prompted.label.toLowerCase()}` },
    { kind: 'text', name: names.how, tooltip: `${title}: how it differs`, multiline: true },
  ];
}

function sheetFields(sheet: WatchSheet): FieldSpec[] {
  const name = (code: string): string => sheetFieldName(sheet, code);
  return [
    ...headLines.map(({ code, label }) => ({ kind: 'text' as const, name: name(code), tooltip: label })),
    { kind: 'radio', name: name('judgement'), tooltip: judgement.label, options: shown(judgement.options) },
    ...remarks.map(({ code, label }) => ({
      ...{ kind: 'text' as const, name: name(code), tooltip: label, multiline: true as const },
    })),
  ];
}
