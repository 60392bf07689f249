import {
  HeightRule,
  Paragraph,
  Table,
  TableCell,
  TableLayoutType,
  TableRow,
  VerticalAlignTable,
  WidthType,
} from 'docx';
import { millimetres, pale, rule, style, tableWidth, writeRow } from './look.ts';
import { boldRun } from './runs.ts';

/** One cell: its paragraphs, and how many columns it takes. */
export interface Cell {
  children: readonly Paragraph[];
  span?: number;
}

const padding = { left: millimetres(1.2), right: millimetres(1.2), top: 0, bottom: millimetres(0.6) };

function tableCell({ children, span = 1 }: Cell, width: number): TableCell {
  return new TableCell({
    children,
    columnSpan: span,
    width: { size: width, type: WidthType.DXA },
    margins: padding,
    verticalAlign: VerticalAlignTable.TOP,
  });
}

const widthOf = (widths: readonly number[], from: number, span = 1): number =>
  widths.slice(from, from + span).reduce((sum, width) => sum + width, 0);

function tableCells(cells: readonly Cell[], widths: readonly number[]): TableCell[] {
  let column = 0;
  return cells.map((cell) => {
    const width = widthOf(widths, column, cell.span);
    column += cell.span ?? 1;
    return tableCell(cell, width);
  });
}

const bold = (words: string): Paragraph =>
  new Paragraph({ style: style.note, keepNext: true, children: [boldRun(words)] });

/** A table whose first row names the columns on every page; no row breaks over two pages. Widths in twips. */
export function table(heads: readonly string[], widths: readonly number[], rows: readonly (readonly Cell[])[]): Table {
  const head = heads.map((words) => ({ children: [bold(words)] }));
  return new Table({
    layout: TableLayoutType.FIXED,
    width: { size: tableWidth, type: WidthType.DXA },
    columnWidths: widths,
    borders: { top: rule, bottom: rule, left: pale, right: pale, insideHorizontal: pale, insideVertical: pale },
    rows: [
      new TableRow({ children: tableCells(head, widths), tableHeader: true, cantSplit: true }),
      ...rows.map(
        (cells) =>
          new TableRow({
            children: tableCells(cells, widths),
            cantSplit: true,
            height: { value: writeRow, rule: HeightRule.ATLEAST },
          }),
      ),
    ],
  });
}
