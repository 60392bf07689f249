import { HeadingLevel, Paragraph, type Table } from 'docx';
import type { FormItem, FormSection } from '../../../schemas/form.ts';
import { cautionSentences, nowFindings, sensitiveWords } from '../paper/guidance.ts';
import { isPrinted, type Numbered } from '../paper/numbering.ts';
import { newScales, type ScaleKey } from '../paper/scale-keys.ts';
import { style } from './look.ts';
import { recordTable } from './record-table.ts';
import { run, softRun } from './runs.ts';
import { led } from './safety.ts';

/** What must be read before the hands move: the first caution and what cannot wait; the rest stands in the annex. */
function safety(item: FormItem): Paragraph[] {
  const [caution] = cautionSentences(item);
  const now = nowFindings(item);
  return [
    ...(item.sensitive ? [new Paragraph({ style: style.safety, text: sensitiveWords })] : []),
    ...(caution === undefined ? [] : [led('Caution:', caution)]),
    ...(now.length === 0 ? [] : [led('Red flag, act now:', `${now.join(' • ')}.`)]),
    ...(item.localNote === undefined ? [] : [led(`Local note, ${item.localNote.by}:`, item.localNote.words)]),
  ];
}

function scaleKey({ title, grades, source }: ScaleKey): Paragraph {
  const words = `${grades.join('; ')}.${source === undefined ? '' : ` ${source}.`}`;
  return led(`${title}:`, words);
}

function position(words: string): Paragraph {
  return new Paragraph({
    style: style.safety,
    children: [softRun('Position: '), run(words)],
  });
}

/** An item: number and title, position, safety, the grades that it is the first to need, then what it asks for. */
function itemParts(
  item: FormItem,
  before: readonly FormItem[],
  { numberOf, positionOf }: Numbered,
): (Paragraph | Table)[] {
  const last = before.at(-1);
  const moved = last === undefined || positionOf(last).words !== positionOf(item).words;
  return [
    new Paragraph({ heading: HeadingLevel.HEADING_3, text: `${numberOf.get(item.manoeuvre)}. ${item.title}` }),
    ...(moved ? [position(positionOf(item).words)] : []),
    ...safety(item),
    ...newScales(item, before).map(scaleKey),
    ...recordTable(item),
  ];
}

/** A section with the items that stand on the form; nothing where none does. */
export function sectionParts(section: FormSection, all: Numbered): (Paragraph | Table)[] {
  const items = section.items.filter((item) => isPrinted(section, item));
  if (items.length === 0) return [];
  return [
    new Paragraph({ heading: HeadingLevel.HEADING_2, text: section.title }),
    ...items.flatMap((item, index) => itemParts(item, items.slice(0, index), all)),
  ];
}
