import type { APIRoute, GetStaticPathsItem } from 'astro';
import type { Form } from '../../../schemas/form.ts';
import { observationQuestionnaire } from '../../forms/observation-questionnaire.ts';
import { pressedWatch } from '../_press/press.ts';
import { currentForms } from './_current.ts';

/** The observation sheets of a form in one format. */
interface WatchFile {
  ending: 'pdf' | 'json';
  /** Name of the file without its ending. */
  name: string;
  words: string;
  use: string;
  mediaType: string;
  write: () => Promise<Uint8Array<ArrayBuffer>> | string;
}

/** What is offered of a form's observation sheets. */
export function watchFiles(form: Form): WatchFile[] {
  const pdf = { ending: 'pdf', mediaType: 'application/pdf' } as const;
  const json = { ending: 'json', mediaType: 'application/fhir+json' } as const;
  const name = `${form.id}.watch`;
  return [
    {
      ...{ ...pdf, name: `${name}.a4`, words: 'the observation sheet, A4', use: 'To print, or to fill on screen.' },
      write: () => pressedWatch(form, 'a4'),
    },
    {
      ...{
        ...pdf,
        name: `${name}.letter`,
        words: 'the observation sheet, US Letter',
        use: 'The same on Letter paper.',
      },
      write: () => pressedWatch(form, 'letter'),
    },
    {
      ...{ ...json, name: `${name}.questionnaire`, words: 'the observation sheet as FHIR R4 Questionnaire' },
      use: 'For a system that takes HL7 FHIR R4 (4.0.1). About the learner, not the patient.',
      write: () => `${JSON.stringify(observationQuestionnaire(form), undefined, 2)}\n`,
    },
  ];
}

/** The files with one ending of every form in use, for a route that spells the ending out. */
export function watchPaths(ending: WatchFile['ending']): GetStaticPathsItem[] {
  return currentForms.flatMap((form) =>
    watchFiles(form)
      .filter((file) => file.ending === ending)
      .map((file) => ({ params: { form: form.id, file: file.name }, props: { file } })),
  );
}

/** Serves one of them. */
export const serveWatchFile: APIRoute<{ file: WatchFile }> = async ({ props: { file } }) =>
  new Response(await file.write(), { headers: { 'Content-Type': file.mediaType } });

// A build will ask for all of them; the development server sets what is looked at.
if (import.meta.env.PROD)
  for (const form of currentForms)
    for (const paper of ['a4', 'letter'] as const) pressedWatch(form, paper).catch(() => undefined);
