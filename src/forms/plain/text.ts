import type { Form, FormItem, FormSection } from '../../../schemas/form.ts';
import { notPartGuide, notPartTitle, omissionsOf, omissionWords, omittedItem } from '../clinic/not-part.ts';
import { contactWords } from '../clinic/sheet-contacts.ts';
import { editionWords, formSafety, shortCode } from '../edition.ts';
import { nowFindings } from '../paper/guidance.ts';
import { isPrinted, type Numbered, numbered, unprintedItems } from '../paper/numbering.ts';
import { newScales } from '../paper/scale-keys.ts';
import { closingFields, openingFields } from '../paper/sheet-fields.ts';
import { fillingIn, rightsWords, unwellFirst } from '../paper/words.ts';
import { safetyLines } from '../safety-words.ts';
import { standingWords } from '../standing.ts';
import { fieldLines, sheetFieldLines } from './fields.ts';
import { wrapped } from './wrap.ts';

/** Lines that stand together, with an empty line after them. */
type Block = string[];

/**
 * The blank form as plain text (UTF-8): lines of at most 80 characters but for a longer address, in an order and with
 * words that make sense read aloud. Nothing is drawn: each answer goes into a box or behind a colon.
 */
export function formText(form: Form): string {
  const all = numbered(form);
  const blocks = [
    ...headBlocks(form),
    ...form.sections.flatMap((section) => sectionBlocks(section, all)),
    ...notPartBlocks(form),
    ['AT THE END'],
    ...closingFields.filter((spec) => !('optional' in spec)).map(sheetFieldLines),
    ['IDENTITY AND RIGHTS'],
    ...rightsWords(form).map((words) => wrapped(words)),
    wrapped(formSafety),
    [`End of form ${editionWords(form)}, code ${shortCode(form.hash)}.`],
  ];
  return `${blocks.map((block) => block.join('\n')).join('\n\n')}\n`;
}

const listed = (lead: string, findings: readonly string[]): Block[] =>
  findings.length === 0 ? [] : [[lead, ...findings.flatMap((finding) => wrapped(finding, '- ', 2))]];

function contactBlock(form: Form): Block[] {
  const [head, ...rows] = contactWords(form);
  return head === undefined ? [] : [[...wrapped(head), ...rows.flatMap((row) => wrapped(row, '- ', 2))]];
}

function notPartBlocks(form: Form): Block[] {
  const omissions = omissionsOf(form);
  if (omissions.length === 0) return [];
  const items = omissions.map((omission) => [
    ...wrapped(`${omissionWords(omission)}.`),
    ...safetyLines(omittedItem(omission)).flatMap(({ text }) => wrapped(text, '', 2)),
  ]);
  return [[notPartTitle.toUpperCase()], wrapped(notPartGuide), ...items];
}

function headBlocks(form: Form): Block[] {
  const now = unprintedItems(form).flatMap(nowFindings);
  return [
    wrapped(form.title.toUpperCase()),
    wrapped(`Form ${editionWords(form)}, ${form.date}, code ${shortCode(form.hash)}.`),
    wrapped(standingWords(form)),
    wrapped(formSafety),
    wrapped(unwellFirst),
    ...listed('Act now on any of these:', now),
    ...contactBlock(form),
    ...listed('Must not be missed:', form.mustNotMiss),
    wrapped(`What it is for: ${form.purpose}`),
    wrapped(`What it leaves out: ${form.leavesOut}`),
    wrapped(`Filling in: ${fillingIn.join(' ')} Put a cross into a box, and write behind a colon.`),
    ['HEAD OF THE SHEET'],
    ...openingFields.map(sheetFieldLines),
  ];
}

function sectionBlocks({ title, ...section }: FormSection, all: Numbered): Block[] {
  const asked = section.items.filter((item) => isPrinted({ title, ...section }, item));
  return [
    wrapped(`PART: ${title.toUpperCase()}`),
    ...section.items.flatMap((item) => itemBlocks(item, asked.slice(0, asked.indexOf(item)), all)),
  ];
}

/** An item: number, title, position, every safety line in full, the grades it is the first to need, then its blanks. */
function itemBlocks(item: FormItem, before: readonly FormItem[], { numberOf, positionOf }: Numbered): Block[] {
  const number = numberOf.get(item.manoeuvre);
  const title = number === undefined ? item.title : `Item ${number}. ${item.title}`;
  const grades = newScales(item, before).flatMap(({ title: scale, grades: all, source }) => [
    ...wrapped(`${scale}, the grades:`),
    ...all.flatMap((grade) => wrapped(grade, '- ', 2)),
    ...(source === undefined ? [] : wrapped(`Source: ${source}`, '  ')),
  ]);
  return [
    [
      ...wrapped(title),
      ...wrapped(`Position: ${positionOf(item).words}`),
      ...safetyLines(item).flatMap(({ text }) => wrapped(text, '', 2)),
    ],
    ...(grades.length === 0 ? [] : [grades]),
    ...item.fields.map(fieldLines),
  ];
}
