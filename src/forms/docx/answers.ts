import { Paragraph, type ParagraphChild, Tab, TabStopType, TextRun } from 'docx';
import type { FormField } from '../../../schemas/form.ts';
import { type Answer, answersOf } from '../answers.ts';
import { blank, checkBox, list } from './controls.ts';
import { millimetres, rule, size, style } from './look.ts';
import { run, softRun } from './runs.ts';

type Coded = Extract<Answer, { type: 'coded' }>;

/** Words and the box before them stay together. */
const joined = (words: string): string => `\u00a0${words.replaceAll(' ', '\u00a0')}`;
/** Longer words may turn. */
const longestUnbroken = 24;
const beside = (words: string): string => (words.length > longestUnbroken ? `\u00a0${words}` : joined(words));

const caption = (words: string): TextRun => softRun(`${words} `, { size: size.edge });

/** A box and its words, bold where the answer is normal. */
export function box(name: { tag: string; alias: string }, words: string, bold: boolean): ParagraphChild[] {
  return [checkBox(name), run(`${beside(words)}  `, { bold })];
}

/** The words beside a box: a grade's meaning stands above its item, so that its code is enough. */
const optionWords = ({ field }: Coded, { code, label }: Coded['options'][number]): string => {
  if (field.kind === 'finding') return label.toLowerCase();
  return field.kind === 'scale' ? code : label;
};

const isNormal = ({ field }: Coded, code: string): boolean =>
  'options' in field && field.options.some((option) => option.code === code && option.normal);

function boxes(answer: Coded): ParagraphChild[] {
  return answer.options.flatMap((option) => {
    const name = { tag: `${answer.linkId}=${option.code}`, alias: `${answer.label}: ${option.label}` };
    return box(name, optionWords(answer, option), isNormal(answer, option.code));
  });
}

const nameOf = ({ linkId, label }: Answer): { tag: string; alias: string } => ({ tag: linkId, alias: label });

const paragraph = (children: readonly ParagraphChild[]): Paragraph => new Paragraph({ style: style.answer, children });

/** Where why something was not examined stands on its line: in a cell of one side, and in one across both. */
const whyStops = { sided: millimetres(41), whole: millimetres(100) };

/** A line to write on, the width of its cell. */
export const ruled = (children: readonly ParagraphChild[], stop = whyStops.sided): Paragraph =>
  new Paragraph({
    style: style.answer,
    spacing: { before: 120, after: 40 },
    border: { bottom: rule },
    tabStops: [{ type: TabStopType.LEFT, position: stop }],
    children,
  });

/** Widths of empty blanks, in figures. */
const widthOf = { detail: 12, number: 8, words: 20 };

/** Why not examined, behind what is abnormal on the same line. */
const whyPart = (answer: Coded): ParagraphChild[] => [
  new TextRun({ children: [new Tab()] }),
  caption('why not'),
  list(nameOf(answer), answer.options),
];

/** The line of a finding: what is abnormal, then why it was not examined. */
function findingLine(field: FormField, parts: readonly Answer[]): Paragraph {
  const detail = parts.filter(({ type }) => type === 'text');
  const why = parts.filter((part) => part.type === 'coded');
  const words = detail.flatMap((part) => [caption('detail'), blank(nameOf(part), widthOf.detail, 'ruled line')]);
  return ruled([...words, ...why.flatMap(whyPart)], field.side === 'none' ? whyStops.whole : whyStops.sided);
}

function ownAnswer(answer: Answer): Paragraph {
  switch (answer.type) {
    case 'coded':
      return paragraph(boxes(answer));
    case 'number':
      return paragraph([blank(nameOf(answer), widthOf.number, 'own line'), run(` ${answer.unitLabel}`)]);
    case 'text':
      return ruled([blank(nameOf(answer), widthOf.words, 'ruled line')]);
  }
}

/** What is filled in for one field, in one cell of a table. */
export function answerParagraphs(field: FormField): Paragraph[] {
  const [own, ...parts] = answersOf(field);
  if (own === undefined) return [];
  return parts.length === 0 ? [ownAnswer(own)] : [ownAnswer(own), findingLine(field, parts)];
}
