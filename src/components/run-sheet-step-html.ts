import type { BlockStep } from '../plan/blocks.ts';
import { durationText, labelOf, midSentence } from './labels.ts';
import { markup, trusted, type Markup } from './markup.ts';
import { exposedWords, labelsText, stepAnchor } from './run-sheet.ts';
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
  return markup`<li class="step" id="${stepAnchor(sheet, number)}"><div class="step-head"><p class="what"><span class="number">${number}</span> <a href="${manoeuvre.page}">${manoeuvre.title}</a></p><p class="small note">${factsOf(entry, manoeuvre, words)}</p></div><div class="step-body">${beforeStepHtml(placed, words)}${entry.step.stage === 1 && mindHtml(manoeuvre)}</div></li>`;
}

/** Seconds, sides, stage and instruments of a step, in a line. */
export function factsOf({ step }: BlockStep, { sides, stages }: SheetEntry, { vocabulary }: SheetWords): string {
  return [
    durationText(step.seconds),
    sidesOf(step.side, sides),
    stages > 1 && `stage ${step.stage} of ${stages}`,
    step.instruments.length > 0 && labelsText(vocabulary.instruments, step.instruments),
  ]
    .filter((fact) => fact !== false)
    .join('; ');
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
    moveTo !== undefined && markup`<p><b>Stand:</b> ${midSentence(labelOf(vocabulary.examinerPlaces, moveTo))}.</p>`;
  return markup`${covering}${uncover.map((id) => uncoverHtml(id, vocabulary))}${standing}`;
}

function uncoverHtml(id: string, vocabulary: SheetWords['vocabulary']): Markup {
  const exposure = vocabulary.exposures.find((one) => one.id === id);
  return markup`<p><b>Uncover</b> the ${exposedWords(vocabulary, [id])}. <span class="small">${exposure?.uncover} ${exposure?.cover}</span></p>`;
}

/** Consent, what is urgent and what hurts, at the first stage of a manoeuvre. */
export function mindHtml(manoeuvre: SheetEntry): Markup {
  const { sensitive, notes } = manoeuvre;
  return markup`${
    sensitive && markup`<p><b>Sensitive.</b> Explicit consent, chaperone offered, right to stop.</p>`
  }${notes && nowHtml(notes, manoeuvre)}${
    notes && markup`<p class="small"><b>Caution.</b> ${trusted(notes.cautions.join(' '))}</p>`
  }`;
}

function nowHtml({ now }: EntryNotes, { page, title }: SheetEntry): Markup | false {
  if (now.length === 0) return false;
  const findings = now.map((finding, i) => (i === 0 ? finding : midSentence(finding))).join('; ');
  return markup`<p class="small act-now"><b>Now</b> ${trusted(findings)}. <a class="not-on-paper" href="${page}#red-flags">What to do<span class="out-of-sight">: ${title}</span></a></p>`;
}
