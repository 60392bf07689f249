/** Sets PDFs beside the pages: threads work through the jobs while Astro renders. */
import { availableParallelism } from 'node:os';
import { resolve } from 'node:path';
import { Piscina } from 'piscina';
import { cardSetsOf } from '../../cards/select.ts';
import type { Paper } from '../../forms/paper/sheet.ts';
import { library } from '../_data.ts';
import type { Job, PressedCards } from './job.ts';

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
function once(job: Job): Promise<unknown> {
  const key = JSON.stringify(job);
  const running = jobs.get(key) ?? (pool.run(job) as Promise<unknown>);
  // Whoever awaits the files gets the fault; until then it must not count as unhandled.
  running.catch(() => undefined);
  jobs.set(key, running);
  return running;
}

/** A card set in every size, with how its cards fit. Rejects naming every card that does not. */
export const pressedCards = (set: string): Promise<PressedCards> =>
  once({ kind: 'cards', set }) as Promise<PressedCards>;

/** A form as a fillable PDF. Rejects as formPdf does. */
export const pressedForm = (form: string, paper: Paper): Promise<Uint8Array<ArrayBuffer>> =>
  once({ kind: 'form', form, paper }) as Promise<Uint8Array<ArrayBuffer>>;

/** Starts on everything that a build will ask for, the longest jobs first. */
export function startPressing(forms: readonly string[]): void {
  for (const form of forms) for (const paper of ['a4', 'letter'] as const) void pressedForm(form, paper);
  for (const { id } of cardSetsOf(library)) void pressedCards(id);
}
