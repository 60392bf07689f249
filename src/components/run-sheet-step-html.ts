import type { BlockStep } from '../plan/blocks.ts';
import { durationText, labelOf, midSentence } from './labels.ts';
import { markup, trusted, type Markup } from './markup.ts';
import { exposedWords, labelsText, stepAnchor } from './run-sheet.ts';
import { minuteOf, set } from '../sheets/words.ts';
import type { EntryNotes, SheetEntry, SheetWords } from './run-sheet-words.ts';

/** A step in its place on the sheet. */
export interface PlacedStep {
  entry: BlockStep;
  /** Number on the sheet, from 1. */
  number: number;
  /** Examiner place to move to, where the examiner has to. */
  moveTo: string | undefined;
  /** Whether what is to be covered was covered already, before the patient moved. */
  coveredBefore: boolean;
}

/** One step: what is done hangs in the margin, what to mind stands beside it. */
export function stepHtml(sheet: string, placed: PlacedStep, words: SheetWords): Markup {
  const { entry, number } = placed;
  const manoeuvre = words.entry(entry.step.manoeuvre);
  return markup`<li class="step" id="${stepAnchor(sheet, number)}"><div class="step-head"><p class="what"><span class="number">${number}</span> <a href="${manoeuvre.page}">${manoeuvre.title}</a></p><p class="small note">${factsOf(entry, manoeuvre)}</p>${takeHtml(entry, words)}</div><div class="step-body">${beforeStepHtml(placed, words)}${safetyHtml(sheet, placed, manoeuvre)}</div></li>`;
}

/** At a later stage of a manoeuvre its safety stands at the first, some steps up. */
function safetyHtml(sheet: string, { entry: { step }, number }: PlacedStep, manoeuvre: SheetEntry): Markup {
  if (step.stage === 1) return mindHtml(manoeuvre);
  const first = number - step.stage + 1;
  return markup`<p class="small">Caution and findings as at <a href="#${stepAnchor(sheet, first)}"><b>${first}</b></a>.</p>`;
}

/** Minute in which a step begins, seconds that it takes, sides and stage, in a line. */
export function factsOf({ step }: BlockStep, { sides, stages }: SheetEntry): string {
  return [
    `at ${minuteOf(step.start)}`,
    `takes ${durationText(Math.round(step.seconds))}`,
    sidesOf(step.side, sides),
    stages > 1 && `stage ${step.stage} of ${stages}`,
  ]
    .filter((fact) => fact !== false)
    .join('; ');
}

/** The instruments that are taken up for a step. */
export function takeHtml({ step: { instruments } }: BlockStep, { vocabulary }: SheetWords): Markup | false {
  return (
    instruments.length > 0 &&
    markup`<p class="small note take"><b>Take:</b> ${labelsText(vocabulary.instruments, instruments)}.</p>`
  );
}

/** A side that is to be avoided is named even where the other is done. */
function sidesOf(only: 'left' | 'right' | undefined, sides: SheetEntry['sides']): string | false {
  if (only !== undefined) return `${only} side only, not the ${only === 'left' ? 'right' : 'left'}`;
  return sides === 'both' ? 'both sides' : sides !== 'none' && `${sides} side`;
}

/** What to cover, to uncover, and where to stand, just before a step. */
export function beforeStepHtml(
  { entry: { cover, uncover }, moveTo, coveredBefore }: PlacedStep,
  { vocabulary }: SheetWords,
): Markup {
  const covering =
    !coveredBefore && cover.length > 0 && markup`<p><b>Cover</b> the ${exposedWords(vocabulary, cover)}.</p>`;
  const standing =
    moveTo !== undefined &&
    markup`<p><b>Stand:</b> ${set(midSentence(labelOf(vocabulary.examinerPlaces, moveTo)))}.</p>`;
  return markup`${covering}${uncover.map((id) => uncoverHtml(id, vocabulary))}${standing}`;
}

function uncoverHtml(id: string, vocabulary: SheetWords['vocabulary']): Markup {
  const exposure = vocabulary.exposures.find((one) => one.id === id);
  return markup`<p><b>Uncover</b> the ${exposedWords(vocabulary, [id])}. <span class="small">${exposure?.uncover} ${exposure?.cover}</span></p>`;
}

/** Consent, what hurts and what is urgent. */
export function mindHtml(manoeuvre: SheetEntry): Markup {
  const { sensitive, notes } = manoeuvre;
  return markup`${
    sensitive && markup`<p><b>Sensitive.</b> Explicit consent, chaperone offered, right to stop.</p>`
  }${notes && markup`<p class="small"><b>Caution.</b> ${trusted(notes.cautions.join(' '))}</p>`}${
    notes && nowHtml(notes)
  }`;
}

function nowHtml({ now }: EntryNotes): Markup | false {
  if (now.length === 0) return false;
  const findings = now.map(({ finding, action }) => markup`<li><b>${trusted(finding)}</b> → ${trusted(action)}</li>`);
  return markup`<div class="small act-now"><p><b>Now</b></p><ul>${findings}</ul></div>`;
}
