import type { Plan } from '../../schemas/plan.ts';
import { coverAtEnd, instrumentsToLayOut, type Block } from '../plan/blocks.ts';
import { countWords, proofText } from '../sheets/proof-words.ts';
import { durationText, labelOf, midSentence } from './labels.ts';
import { markup, trusted, type Markup } from './markup.ts';
import { exposedWords, minutesText, type OtherOrders } from './run-sheet.ts';
import { blockHtml, orderHtml, placedBlocks } from './run-sheet-block-html.ts';
import type { NotesState, SheetWords } from './run-sheet-words.ts';
import { timeStripHtml } from './time-strip-html.ts';

/** A run sheet to be shown. */
export interface SheetView {
  /** Prefix of its anchors. */
  id: string;
  plan: Plan;
  blocks: readonly Block[];
  /** Signs that a complaint-led examination must not miss. */
  mustNotMiss: readonly string[];
  /** What the examination leaves out by design. */
  leavesOut: string | undefined;
  /** Undefined while they are being worked out. */
  others: OtherOrders | undefined;
  notes: NotesState;
  /** Level of the headings of its parts. */
  level: number;
}

/** A run sheet as HTML without its title: the same in the built page and in the browser. */
export function sheetHtml(view: SheetView, words: SheetWords): Markup {
  const { id, plan, level } = view;
  const blocks = placedBlocks(view.blocks);
  const part = (title: string, body: Markup, more = ''): Markup =>
    markup`<section class="headed${more}"><h${level}>${title}</h${level}>${body}</section>`;
  if (blocks.length === 0)
    return markup`${part('Empty', markup`<p>Nothing is left that can be done.</p>`)}${leftOutHtml(plan, words, part)}`;
  return markup`${part('Before all', openingHtml(view, words), ' alarm')}${
    view.mustNotMiss.length > 0 &&
    part('Must not be missed', linesHtml(view.mustNotMiss.map((sign) => markup`${sign}.`)), ' alarm must-not-miss')
  }${
    view.leavesOut !== undefined && part('Leaves out', markup`<p>${view.leavesOut}</p>`)
  }${part('In all', inAllHtml(view, words), ' in-all')}${part(
    'In order',
    orderHtml(id, blocks, words, level + 1),
    ' order',
  )}${part('Lay out', layOutHtml(plan, words))}${leftOutHtml(plan, words, part)}${blocks.map((block) =>
    blockHtml(id, block, words, level),
  )}${atEndHtml(plan, words, part)}`;
}

type MakePart = (title: string, body: Markup, more?: string) => Markup;

const linesHtml = (lines: readonly Markup[]): Markup =>
  markup`<ul class="lines">${lines.map((line) => markup`<li>${line}</li>`)}</ul>`;

const notesWords: Record<NotesState, string | undefined> = {
  there: undefined,
  awaited: 'Cautions and urgent findings are on their way.',
  failed: 'Cautions and urgent findings could not be fetched: read each page before you begin.',
};

function openingHtml({ notes }: SheetView, { unwellPage }: SheetWords): Markup {
  const state = notesWords[notes];
  return markup`<div class="flags"><p class="unwell">Unwell? Stop and treat first.</p><p>Unstable, or a finding marked <b class="now-word">Now</b>: leave the sheet and act by local protocol.${
    unwellPage !== undefined && markup` <a class="not-on-paper" href="${unwellPage}">How to check</a>`
  }</p>${state !== undefined && markup`<p class="notes-state"><b>${state}</b></p>`}</div>`;
}

function inAllHtml({ plan, blocks, others }: SheetView, words: SheetWords): Markup {
  const { totals } = plan;
  const { positions } = words.vocabulary;
  const route = blocks
    .map(({ position }, i) => (i === 0 ? (label: string) => label : midSentence)(labelOf(positions, position)))
    .join('; then ');
  return markup`<div><p><b>${minutesText(totals.seconds)}</b> for an experienced examiner and a well adult; <b>${countWords(totals.positionChanges, 'change')} of position</b>: ${route}. Moving takes ${durationText(Math.round(totals.positionSeconds))}.<span class="only-paper"> No patient’s details on this sheet.</span></p><p class="small note">${proofText(plan)}</p><div class="comparison">${
    others !== undefined && comparisonHtml(totals, others)
  }</div>${timeStripHtml(plan, words)}</div>`;
}

/** The same steps in this order, in plain head-to-toe order, and system by system. */
export function comparisonHtml(totals: Plan['totals'], others: OtherOrders): Markup {
  const row = (name: string, { positionChanges, positionSeconds, seconds }: Plan['totals']): Markup =>
    markup`<tr><th scope="row">${name}</th><td class="number">${positionChanges}</td><td class="number">${durationText(Math.round(positionSeconds))}</td><td class="number">${roundMinutes(seconds)}</td></tr>`;
  return markup`<table><thead><tr><th scope="col">Order</th><th scope="col" class="number">Changes</th><th scope="col" class="number">Moving</th><th scope="col" class="number">In all</th></tr></thead><tbody>${row('This sheet', totals)}${row('Head to toe', others.headToToe)}${row('System by system', others.systemBySystem)}</tbody></table>`;
}

/** Whole minutes, short enough for a column. */
const roundMinutes = (seconds: number): string =>
  durationText(seconds < 60 ? Math.round(seconds) : 60 * Math.round(seconds / 60));

function layOutHtml(plan: Plan, { vocabulary }: SheetWords): Markup {
  const things = instrumentsToLayOut(vocabulary, plan);
  if (things.length === 0) return markup`<p>Nothing.</p>`;
  return markup`<dl class="lay-out">${things.map(
    ({ label, check, singleUse }) =>
      markup`<div><dt>${singleUse ? `${label}, single use` : label}</dt><dd class="small">${check}</dd></div>`,
  )}</dl>`;
}

function atEndHtml(plan: Plan, { vocabulary }: SheetWords, part: MakePart): Markup | false {
  const bare = coverAtEnd(plan);
  return bare.length > 0 && part('At the end', markup`<p>Cover the ${exposedWords(vocabulary, bare)}.</p>`);
}

function leftOutHtml({ leftOut }: Plan, { entry, alternatives }: SheetWords, part: MakePart): Markup | false {
  if (leftOut.length === 0) return false;
  const items = leftOut.map(({ manoeuvre, reason }) => {
    const { title, page } = entry(manoeuvre);
    const instead = alternatives(manoeuvre);
    return markup`<a href="${page}">${title}</a> ${reason}.${
      instead.length > 0 && markup` <span class="small"><b>Adapted:</b> ${trusted(instead.join(' '))}</span>`
    }`;
  });
  return part('Left out', linesHtml(items), ' left-out');
}
