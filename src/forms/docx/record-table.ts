import { Paragraph, type Table } from 'docx';
import type { FormField, FormItem } from '../../../schemas/form.ts';
import { acceptedRange, type RecordFields, recordsOf } from '../records.ts';
import { answerParagraphs } from './answers.ts';
import { columns, style } from './look.ts';
import { run, softRun } from './runs.ts';
import { type Cell, table } from './table.ts';

const note = (head: string, words: string): Paragraph =>
  new Paragraph({
    style: style.note,
    children: [softRun(`${head}: `), run(words)],
  });

/** What is normal, and what a number is accepted between; a normal grade or answer is set bold among its fellows instead. */
function notes(field: FormField): Paragraph[] {
  if (field.kind === 'finding') return [note('normal', field.normal)];
  if (field.kind !== 'quantity') return [];
  const normal = field.normal === undefined ? [] : [note('normal', field.normal)];
  return [...normal, note('accepted', `${acceptedRange(field)} ${field.unitLabel}`)];
}

function asked({ label, fields: [first] }: RecordFields): Cell {
  return { children: [new Paragraph({ style: style.asked, text: label }), ...notes(first)] };
}

const cell = (field: FormField | undefined): Cell => ({
  children: field === undefined ? [new Paragraph({ style: style.answer })] : answerParagraphs(field),
});

/** The right always in the second column, the left in the third. */
function sidedRow(record: RecordFields): Cell[] {
  const { fields } = record;
  const [first] = fields;
  if (first.side === 'none') return [asked(record), { ...cell(first), span: 2 }];
  return [
    asked(record),
    ...(['right', 'left'] as const).map((side) => cell(fields.find((each) => each.side === side))),
  ];
}

const wholeRow = (record: RecordFields): Cell[] => [asked(record), cell(record.fields[0])];

/** What an item asks for as a table; nothing for an item that asks for nothing. */
export function recordTable(item: FormItem): Table[] {
  const records = recordsOf(item);
  if (records.length === 0) return [];
  const { asked: words, side } = columns;
  return item.fields.some((field) => field.side !== 'none')
    ? [table(['Asked', 'Patient’s right', 'Patient’s left'], [words, side, side], records.map(sidedRow))]
    : [table(['Asked', 'Answer'], [words, 2 * side], records.map(wholeRow))];
}
