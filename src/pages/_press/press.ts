/** Sets PDFs beside the pages: threads work through the jobs while Astro renders. */
import { availableParallelism } from 'node:os';
import { resolve } from 'node:path';
import { Piscina } from 'piscina';
import type { Form } from '../../../schemas/form.ts';
import { cardSetsOf } from '../../cards/select.ts';
import { type Paper, prints, type Print } from '../../forms/paper/sheet.ts';
import { library } from '../_data.ts';
import type { Job, PressedCards, PressedSheets } from './job.ts';
import { kept } from './kept.ts';

// Found from the working folder, since bundlers move modules. A thread costs some 300 MB, and the typesetter spreads
// its own work over the cores: one is left for the pages.
const pool = new Piscina({
  filename: resolve('src/pages/_press/worker.ts'),
  workerData: library,
  maxThreads: Math.min(Math.max(availableParallelism() - 1, 1), 4),
  idleTimeout: 1000,
});

const jobs = new Map<string, Promise<unknown>>();

/** Runs a job once, however often its files are asked for. */
function once(job: Job, key = JSON.stringify(job)): Promise<unknown> {
  const running = jobs.get(key) ?? (pool.run(job) as Promise<unknown>);
  // Whoever awaits the files gets the fault; until then it must not count as unhandled.
  running.catch(() => undefined);
  jobs.set(key, running);
  return running;
}

/** A card set in every size, with how its cards fit. Rejects naming every card that does not. */
export const pressedCards = (set: string): Promise<PressedCards> =>
  once({ kind: 'cards', set }) as Promise<PressedCards>;

/** A form as a fillable PDF, kept from one build to the next. Rejects as formPdf does. */
export function pressedForm(form: Form, print: Print): Promise<Uint8Array<ArrayBuffer>> {
  const key = `${form.id} ${form.version} ${form.status} ${form.hash} ${print}`;
  return kept(form, `${print}.pdf`, () => once({ kind: 'form', form, print }, key) as Promise<Uint8Array>);
}

/** The observation sheets of a form as a fillable PDF, kept likewise. Rejects as observationPdf does. */
export function pressedWatch(form: Form, paper: Paper): Promise<Uint8Array<ArrayBuffer>> {
  const key = `watch ${form.id} ${form.version} ${form.status} ${form.hash} ${paper}`;
  return kept(form, `watch.${paper}.pdf`, () => once({ kind: 'watch', form, paper }, key) as Promise<Uint8Array>);
}

/** The run sheet of a stock exam in every size. Rejects as sheetPdf does. */
export const pressedSheets = (form: string): Promise<PressedSheets> =>
  once({ kind: 'sheets', form }) as Promise<PressedSheets>;

/** Starts on everything that a build will ask for, the longest jobs first. */
export function startPressing(forms: readonly Form[]): void {
  const longest = forms.toSorted((a, b) => JSON.stringify(b).length - JSON.stringify(a).length);
  for (const form of longest) for (const print of prints) pressedForm(form, print).catch(() => undefined);
  for (const { id } of cardSetsOf(library)) void pressedCards(id);
  for (const { id } of library.forms) void pressedSheets(id);
}
