import type { MakeChoice, MakeKnown } from './make-choice.ts';
import type { MakeEnding } from './make-file-list.ts';
import type { FinishedFile } from './make-files.ts';
import type { LiveForm } from './make-live.ts';

/** What the page learns of the Library when its control is first used. */
export interface MakeFacts extends MakeKnown {
  /** What manoeuvres are also called, by id. */
  names: Readonly<Record<string, string>>;
}

/** What the page asks its worker for, with the answer of each. */
export interface MakeTasks {
  /** `files`: address of the page's data; `root`: address of the site. */
  open: { ask: { files: string; root: string }; answer: MakeFacts };
  /** `day` of the draft, YYYY-MM-DD. */
  show: { ask: { choice: MakeChoice; day: string }; answer: LiveForm };
  file: { ask: { choice: MakeChoice; day: string; ending: MakeEnding }; answer: FinishedFile };
}

export type MakeTask = keyof MakeTasks;

/** A message to the worker. */
export type MakeAsk = { [Task in MakeTask]: { number: number; task: Task; ask: MakeTasks[Task]['ask'] } }[MakeTask];

/** A message from it: the answer, or what is amiss in words. */
export type MakeReply = { number: number; answer: MakeTasks[MakeTask]['answer'] } | { number: number; fault: string };
