import type { Block } from '../plan/blocks.ts';
import { positionMarkSvg } from '../figures/position-mark.ts';
import { labelOf } from './labels.ts';
import { markup, trusted, type Markup } from './markup.ts';
import { exposedWords } from './run-sheet.ts';
import { moveHtml, placedBlocks, whenText } from './run-sheet-block-html.ts';
import { beforeStepHtml, factsOf, mindHtml, takeHtml, type PlacedStep } from './run-sheet-step-html.ts';
import type { SheetWords } from './run-sheet-words.ts';

/** One screen of a walk through a sheet. */
export type Screen =
  | { kind: 'open'; layOut: readonly string[]; mustNotMiss: readonly string[] }
  | { kind: 'move'; block: Block }
  | { kind: 'step'; block: Block; placed: PlacedStep; steps: number }
  | { kind: 'end'; bare: readonly string[]; leftOut: readonly string[] };

type ScreenOf<Kind extends Screen['kind']> = Extract<Screen, { kind: Kind }>;

/** What the first and the last screen tell. */
export interface WalkEnds {
  /** Instrument ids. */
  layOut: readonly string[];
  /** Signs that a complaint-led examination must not miss. */
  mustNotMiss: readonly string[];
  /** Regions to cover when all is done. */
  bare: readonly string[];
  /** Manoeuvres that could not go on the sheet. */
  leftOut: readonly string[];
}

/** The screens of a sheet: what comes before all, each change of position, each step, the end. */
export function screensOf(blocks: readonly Block[], { layOut, mustNotMiss, bare, leftOut }: WalkEnds): Screen[] {
  const steps = blocks.reduce((sum, block) => sum + block.steps.length, 0);
  const middle = placedBlocks(blocks).flatMap(({ block, steps: placed }): Screen[] => [
    { kind: 'move', block },
    ...placed.map((one) => ({ kind: 'step' as const, block, placed: one, steps })),
  ]);
  return [{ kind: 'open', layOut, mustNotMiss }, ...middle, { kind: 'end', bare, leftOut }];
}

/** Everything that a screen is made from beside the sheet's own words. */
export interface ScreenWords extends SheetWords {
  /** What is said to the patient at a manoeuvre, plain; none while it is being fetched. */
  tell: (id: string) => readonly string[];
  /** The steps that were skipped, for the last screen: number and title. */
  skipped: readonly { number: number; title: string }[];
}

/** A screen as HTML; its heading takes the focus. */
export function screenHtml(screen: Screen, words: ScreenWords): Markup {
  if (screen.kind === 'open') return openHtml(screen, words);
  if (screen.kind === 'move') return movingHtml(screen.block, words);
  if (screen.kind === 'step') return walkStepHtml(screen, words);
  return endHtml(screen, words);
}

const heading = (title: string): Markup => markup`<h2 tabindex="-1">${title}</h2>`;

function openHtml({ layOut, mustNotMiss }: ScreenOf<'open'>, { vocabulary, unwellPage }: ScreenWords): Markup {
  const things = vocabulary.instruments.filter(({ id }) => layOut.includes(id));
  return markup`${heading('Unwell? Stop and treat first.')}<p>Unstable, or a finding marked <b class="now-word">Now</b>: leave the sheet and act by local protocol.${
    unwellPage !== undefined && markup` <a href="${unwellPage}">How to check</a>`
  }</p>${mustNotMiss.length > 0 && signsHtml(mustNotMiss)}${
    things.length > 0 &&
    markup`<p><b>Laid out and checked:</b></p><ul class="lines">${things.map(({ label }) => markup`<li>${label}</li>`)}</ul>`
  }`;
}

const signsHtml = (signs: readonly string[]): Markup =>
  markup`<div class="must-not-miss"><p><b>Must not be missed:</b></p><ul class="lines">${signs.map(
    (sign) => markup`<li>${sign}.</li>`,
  )}</ul></div>`;

function movingHtml(block: Block, words: ScreenWords): Markup {
  const label = labelOf(words.vocabulary.positions, block.position);
  return markup`<p class="walk-place">${trusted(positionMarkSvg(block.position))} ${whenText(block)}</p>${heading(label)}${moveHtml(block, words)}`;
}

function walkStepHtml({ block, placed, steps }: ScreenOf<'step'>, words: ScreenWords): Markup {
  const { step } = placed.entry;
  const manoeuvre = words.entry(step.manoeuvre);
  const said = step.stage === 1 ? words.tell(step.manoeuvre) : [];
  const notAwaited = manoeuvre.notes !== undefined;
  return markup`<p class="walk-place">${trusted(positionMarkSvg(block.position))} ${labelOf(words.vocabulary.positions, block.position)}; step ${placed.number} of ${steps}</p>${heading(manoeuvre.title)}<p class="note">${factsOf(placed.entry, manoeuvre)}</p>${takeHtml(placed.entry, words)}${beforeStepHtml(placed, words)}${
    said.length > 0 && markup`<p class="spoken-line">“${said.join(' ')}”</p>`
  }${mindHtml(manoeuvre)}${
    !notAwaited && markup`<p><b>Cautions are not here: read the page first.</b></p>`
  }<p><a href="${manoeuvre.page}">Open the page</a></p>`;
}

function endHtml({ bare, leftOut }: ScreenOf<'end'>, { vocabulary, skipped, entry }: ScreenWords): Markup {
  return markup`${heading('The end of the sheet')}${
    bare.length > 0 && markup`<p><b>Cover</b> the ${exposedWords(vocabulary, bare)}.</p>`
  }${
    skipped.length === 0
      ? markup`<p>No step of this sheet was skipped.</p>`
      : markup`<p><b>Skipped:</b></p><ol class="skipped">${skipped.map(
          ({ number, title }) =>
            markup`<li><button type="button" data-step="${number}">${number}. ${title}</button></li>`,
        )}</ol>`
  }${
    leftOut.length > 0 &&
    markup`<p><b>Left out before the start:</b></p><ul class="lines">${leftOut.map((id) => markup`<li>${entry(id).title}</li>`)}</ul>`
  }<p class="note">What was done and skipped is kept nowhere: write it down before leaving.</p>`;
}
