import { Footer, Header, PageNumber, Paragraph, type ParagraphChild, Tab, TabStopType, TextRun } from 'docx';
import type { Form } from '../../../schemas/form.ts';
import { editionWords, formSafety, shortCode } from '../edition.ts';
import { identityFields } from '../paper/sheet-fields.ts';
import { blank } from './controls.ts';
import { rule, style, tableWidth } from './look.ts';
import { boldRun, run } from './runs.ts';

const right = [{ type: TabStopType.RIGHT, position: tableWidth }];
const tab = (): TextRun => new TextRun({ children: [new Tab()] });

/** One line of an edge: words on the left, words on the right. */
const line = (left: readonly ParagraphChild[], onRight: readonly ParagraphChild[], above = false): Paragraph =>
  new Paragraph({
    style: style.edge,
    tabStops: right,
    ...(above ? { border: { top: rule } } : {}),
    children: [...left, tab(), ...onRight],
  });

/** Widths of the blanks for name, date of birth and number, in figures. */
const identityWidths = [26, 12, 16];

/** Who the patient is, on every page: written once, it stands on all. */
function identity(): Paragraph {
  const parts = identityFields.flatMap(({ name: tag, tooltip }, index) => [
    run(`${index === 0 ? '' : '   '}${tooltip}: `),
    blank({ tag, alias: tooltip }, identityWidths[index] ?? 12, 'own line'),
  ]);
  const spacing = { before: 140, after: 60 };
  return new Paragraph({ style: style.edge, spacing, border: { bottom: rule }, children: parts });
}

const named = (form: Form): Paragraph =>
  line([boldRun(form.title)], [run(`${editionWords(form)} · ${form.date} · code ${shortCode(form.hash)}`)]);

/** The head of every page that is filled in: which form, then whose. */
export const formHeader = (form: Form): Header => new Header({ children: [named(form), identity()] });

/** The head of a page of the annex, which asks for nothing and so carries no patient. */
export const annexHeader = (form: Form): Header =>
  new Header({
    children: [named(form), new Paragraph({ style: style.edge, text: 'Annex. No patient’s details on this page.' })],
  });

const pageOf = (): TextRun => boldRun('', { children: ['Page ', PageNumber.CURRENT, ' of ', PageNumber.TOTAL_PAGES] });

/** The foot of every page: the safety line and which page it is. */
export const footer = (): Footer =>
  new Footer({
    children: [line([run(formSafety)], [pageOf()], true)],
  });
