import { markedPositions, positionMarkSvg } from '../figures/position-mark.ts';
import type { Block } from '../plan/blocks.ts';
import { durationText, labelOf } from './labels.ts';
import { markup, trusted, type Markup } from './markup.ts';
import { exposedWords, minutesText, sinceStart, stepAnchor } from './run-sheet.ts';
import { stepHtml, type PlacedStep } from './run-sheet-step-html.ts';
import type { SheetWords } from './run-sheet-words.ts';
import { anywhere } from '../plan/totals.ts';

/** A block with its steps numbered on. */
export interface PlacedBlock {
  block: Block;
  steps: PlacedStep[];
}

/** Numbers the steps of a sheet and says where the examiner has to move. */
export function placedBlocks(blocks: readonly Block[]): PlacedBlock[] {
  let number = 0;
  let place: string | undefined;
  return blocks.map((block) => ({
    block,
    steps: block.steps.map((entry, i) => {
      const { examiner } = entry.step;
      const moveTo = examiner === anywhere || examiner === place ? undefined : examiner;
      place = moveTo ?? place;
      number += 1;
      return { entry, number, moveTo, coveredBefore: i === 0 };
    }),
  }));
}

/** Everything done in one position: how to bring the patient into it, then its steps. */
export function blockHtml(sheet: string, { block, steps }: PlacedBlock, words: SheetWords, level: number): Markup {
  const { position } = block;
  const slot = markedPositions.indexOf(position);
  return markup`<section class="headed block"><div class="edge" aria-hidden="true"><div class="slot-${slot}">${trusted(positionMarkSvg(position))}</div></div><h${level}>${labelOf(words.vocabulary.positions, position)} <span class="when">${whenText(block)}</span></h${level}><div class="move">${moveHtml(block, words)}</div><ol class="sheet-steps" start="${steps[0]?.number ?? 1}">${steps.map((step) => stepHtml(sheet, step, words))}</ol></section>`;
}

/** When a block begins and how long it lasts, in words. */
export function whenText({ start, seconds, changeSeconds }: Block): string {
  const moved = start - changeSeconds;
  return `${moved === 0 ? 'Begin here' : `After ${sinceStart(moved)}`}, for ${minutesText(seconds)}`;
}

/** What to cover, say and mind while the patient changes into the position of a block. */
export function moveHtml({ position: id, changeSeconds, steps: [first] }: Block, { vocabulary }: SheetWords): Markup {
  const position = vocabulary.positions.find((one) => one.id === id);
  const cover = first?.cover ?? [];
  return markup`${
    cover.length > 0 && markup`<p><b>Cover</b> the ${exposedWords(vocabulary, cover)} before moving.</p>`
  }<p class="spoken-line">“${position?.say}”</p><p class="small">${
    changeSeconds > 0 && markup`<b>${durationText(Math.round(changeSeconds))} to move. </b>`
  }${position?.description}</p><p class="small"><b>Help.</b> ${position?.help}</p>`;
}

/** The whole sheet at a glance: titles by position, each leading to its step. */
export function orderHtml(sheet: string, blocks: readonly PlacedBlock[], words: SheetWords, level: number): Markup {
  return markup`<div class="in-order">${blocks.map(
    ({ block, steps }) =>
      markup`<div><h${level}>${trusted(positionMarkSvg(block.position))} ${labelOf(words.vocabulary.positions, block.position)}</h${level}><ol start="${steps[0]?.number ?? 1}">${steps.map(
        ({ entry: { step }, number }) =>
          markup`<li><a href="#${stepAnchor(sheet, number)}">${step.stage > 1 && 'Go on: '}${words.entry(step.manoeuvre).title}</a></li>`,
      )}</ol></div>`,
  )}</div>`;
}
