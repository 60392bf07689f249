import { Paragraph, type ParagraphChild, type Table } from 'docx';
import type { FieldOption, FieldSpec } from '../../pdf/form/field-spec.ts';
import { box, ruled } from './answers.ts';
import { blank } from './controls.ts';
import { columns, style } from './look.ts';
import { type Cell, table } from './table.ts';

/** Lines that a summary has room for at least. */
const summaryLines = 5;

const boxes = (children: ParagraphChild[]): Paragraph[] => [new Paragraph({ style: style.answer, children })];

function answer(spec: FieldSpec): Paragraph[] {
  const { name: tag, tooltip: alias } = spec;
  if (spec.kind === 'tick') return boxes(box({ tag, alias }, 'yes', false));
  if (spec.kind !== 'text') return boxes(spec.options.flatMap((option) => optionBox(spec, option)));
  const more = Array.from({ length: spec.multiline === true ? summaryLines - 1 : 0 }, () => ruled([]));
  return [ruled([blank({ tag, alias }, 30, 'ruled line')]), ...more];
}

function optionBox({ name, tooltip }: FieldSpec, { code, display }: FieldOption): ParagraphChild[] {
  return box({ tag: `${name}=${code}`, alias: `${tooltip}: ${display}` }, display, false);
}

const row = (spec: FieldSpec): Cell[] => [
  { children: [new Paragraph({ style: style.asked, text: spec.tooltip })] },
  { children: answer(spec) },
];

/** The blanks of the sheet itself, no part of the form's data, as a table. */
export function sheetTable(fields: readonly FieldSpec[]): Table {
  return table(['Of this sheet', 'Answer'], [columns.asked, 2 * columns.side], fields.map(row));
}
