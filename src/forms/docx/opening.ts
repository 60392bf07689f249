import {
  BorderStyle,
  HeadingLevel,
  HeightRule,
  Paragraph,
  Table,
  TableCell,
  TableLayoutType,
  TableRow,
  TextRun,
  WidthType,
} from 'docx';
import type { Form } from '../../../schemas/form.ts';
import { notPartTitle, omissionsOf, omissionWords } from '../clinic/not-part.ts';
import { contactWords } from '../clinic/sheet-contacts.ts';
import { editionWords } from '../edition.ts';
import { nowFindings } from '../paper/guidance.ts';
import { unprintedItems } from '../paper/numbering.ts';
import { closingFields, identityFields, openingFields } from '../paper/sheet-fields.ts';
import { fillingIn, rightsWords, safetyHere, unwellFirst } from '../paper/words.ts';
import { standingWords } from '../standing.ts';
import { millimetres, style } from './look.ts';
import { boldRun, run, softRun } from './runs.ts';
import { led } from './safety.ts';
import { sheetTable } from './sheet-table.ts';

const heavy = { style: BorderStyle.SINGLE, size: 12, color: '000000', space: 4 };

const listed = (lead: string, findings: readonly string[]): TextRun[] =>
  findings.length === 0 ? [] : [boldRun(`${lead}: `, { break: 1 }), run(`${findings.join(' • ')}.`)];

/** In a frame of its own, before anything is asked. */
function unwell(form: Form): Paragraph {
  return new Paragraph({
    style: style.note,
    border: { top: heavy, bottom: heavy, left: heavy, right: heavy },
    indent: { left: 80, right: 80 },
    children: [
      boldRun(unwellFirst, { size: 24 }),
      ...listed('Now', unprintedItems(form).flatMap(nowFindings)),
      ...listed('Must not be missed', form.mustNotMiss),
    ],
  });
}

/** Room for a printed label, 70 by 37 mm. */
function labelBox(): Table {
  const words = new Paragraph({ style: style.note, children: [softRun('Patient label')] });
  const width = { size: millimetres(70), type: WidthType.DXA };
  const height = { value: millimetres(37), rule: HeightRule.EXACT };
  const row = new TableRow({ height, children: [new TableCell({ width, children: [words] })] });
  return new Table({ layout: TableLayoutType.FIXED, width, columnWidths: [width.size], rows: [row] });
}

const elsewhere = 'Name, date of birth and number stand in the head of every page: open it, write them once.';

/** What stands before the first item: what the form is, what comes first, how it is filled in, and the sheet's own blanks. */
export function openingParts(form: Form, hasAnnex: boolean): (Paragraph | Table)[] {
  const own = new Set(identityFields.map(({ name }) => name));
  return [
    new Paragraph({ heading: HeadingLevel.TITLE, text: form.title }),
    new Paragraph({ style: style.note, text: `${editionWords(form)}, ${form.date}` }),
    led('Standing.', standingWords(form), style.note),
    unwell(form),
    ...contactWords(form).map((words) => new Paragraph({ style: style.note, text: words })),
    led('What it is for.', form.purpose, style.note),
    led('What it leaves out.', form.leavesOut, style.note),
    led('Filling in.', `${fillingIn.join(' ')} An answer in bold is normal. ${elsewhere}`, style.note),
    ...(hasAnnex ? [led('Safety.', safetyHere, style.note)] : []),
    new Paragraph({ heading: HeadingLevel.HEADING_2, text: 'Head of the sheet' }),
    labelBox(),
    new Paragraph({ style: style.note }),
    sheetTable(openingFields.filter(({ name }) => !own.has(name))),
  ];
}

function notPart(form: Form): Paragraph[] {
  const items = omissionsOf(form).map(omissionWords);
  return items.length === 0 ? [] : [led(`${notPartTitle}:`, `${items.join('; ')}.`, style.note)];
}

/** What stands after the last item: how it ended, who signs, and who owns the words. */
export function closingParts(form: Form): (Paragraph | Table)[] {
  return [
    new Paragraph({ heading: HeadingLevel.HEADING_2, text: 'At the end' }),
    sheetTable(closingFields.filter((field) => !('optional' in field))),
    ...notPart(form),
    new Paragraph({ heading: HeadingLevel.HEADING_2, text: 'Identity and rights' }),
    ...rightsWords(form).map((text) => new Paragraph({ style: style.note, text })),
  ];
}
