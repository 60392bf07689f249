import { HeadingLevel, Paragraph } from 'docx';
import type { Form } from '../../../schemas/form.ts';
import { type AnnexEntry, annexOf } from '../paper/annex.ts';
import type { FlagGroup } from '../paper/guidance.ts';
import type { Numbered } from '../paper/numbering.ts';
import { style } from './look.ts';
import { flagLine, led } from './safety.ts';

function flagParts({ words, flags }: FlagGroup): Paragraph[] {
  const lines = flags.map(({ finding, action }) => flagLine(`${finding}. → ${action}`));
  return [led(`Red flag, ${words}:`, ''), ...lines];
}

function entryParts({ number, title, sensitive, cautions, flags }: AnnexEntry): Paragraph[] {
  return [
    new Paragraph({
      heading: HeadingLevel.HEADING_3,
      text: number === undefined ? title : `${number}. ${title}`,
    }),
    ...(sensitive === undefined ? [] : [new Paragraph({ style: style.note, text: sensitive })]),
    ...(cautions.length === 0 ? [] : [led('Cautions:', cautions.join(' '), style.note)]),
    ...flags.flatMap(flagParts),
  ];
}

/** Every caution and every red flag in full, with what to do; nothing for a form that has none. */
export function annexParts(form: Form, all: Numbered): Paragraph[] {
  const sections = annexOf(form, all);
  if (sections.length === 0) return [];
  return [
    new Paragraph({
      heading: HeadingLevel.HEADING_1,
      text: 'Cautions and red flags: read before you start, keep with the forms',
    }),
    new Paragraph({
      style: style.note,
      text: `${form.title}. In the order of the form; each number is the item’s number there. Local protocol comes first.`,
    }),
    ...sections.flatMap(({ title, entries }) => [
      new Paragraph({ heading: HeadingLevel.HEADING_2, text: title }),
      ...entries.flatMap(entryParts),
    ]),
  ];
}
