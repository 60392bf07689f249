/** Makes forms beside the page, so that choosing stays quick while a form is planned or set. */
import type { Library } from '../../schemas/library.ts';
import { inPageOrder } from '../plan/manoeuvres-of.ts';
import { definitionOfChoice, knownOf } from './make-definition.ts';
import { finishedFile, type FinishedFile } from './make-files.ts';
import { madeForm, type MadeForm } from './make-form.ts';
import { liveForm, type LiveForm } from './make-live.ts';
import type { MakeAsk, MakeFacts, MakeReply, MakeTasks } from './make-messages.ts';
import { libraryOfSlice, type MakeSlice } from './make-slice.ts';

let library: Library | undefined;
let place = { files: '', root: '' };

async function open(asked: MakeTasks['open']['ask']): Promise<MakeFacts> {
  place = asked;
  const answer = await fetch(`${place.files}library.json`);
  if (!answer.ok) throw new Error(`library.json: ${answer.status}`);
  library = libraryOfSlice((await answer.json()) as MakeSlice);
  const names = inPageOrder(library).map(({ id, synonyms }) => [id, synonyms.join(' ')] as const);
  return { ...knownOf(library), names: Object.fromEntries(names) };
}

let made: { key: string; form: MadeForm } | undefined;

/** The form of a choice; the last one is remembered, since its files are asked for one by one. */
function formOf({ choice, day }: MakeTasks['show']['ask']): MadeForm {
  if (library === undefined) throw new Error('The library is not there yet.');
  const key = JSON.stringify([choice, day]);
  if (made?.key !== key) made = { key, form: madeForm(library, definitionOfChoice(library, choice, day)) };
  return made.form;
}

const show = (asked: MakeTasks['show']['ask']): LiveForm => liveForm(formOf(asked), place.root);

const file = (asked: MakeTasks['file']['ask']): Promise<FinishedFile> =>
  finishedFile(formOf(asked), asked.ending, async (form, paper) =>
    (await import('./make-pdf.ts')).madePdf(form, paper, place.files),
  );

function answer(asked: MakeAsk): MakeReplyValue | Promise<MakeReplyValue> {
  if (asked.task === 'open') return open(asked.ask);
  return asked.task === 'show' ? show(asked.ask) : file(asked.ask);
}

type MakeReplyValue = MakeFacts | LiveForm | FinishedFile;

/** The part of a worker's own scope that is used here. */
interface Scope {
  addEventListener: (kind: 'message', listen: (event: MessageEvent<MakeAsk>) => void) => void;
  postMessage: (reply: MakeReply) => void;
}

const scope = globalThis as unknown as Scope;

async function reply(asked: MakeAsk): Promise<MakeReply> {
  try {
    return { number: asked.number, answer: await answer(asked) };
  } catch (error) {
    return { number: asked.number, fault: error instanceof Error ? error.message : String(error) };
  }
}

scope.addEventListener('message', ({ data }) => void reply(data).then((value) => scope.postMessage(value)));
