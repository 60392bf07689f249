import type { Form } from '../../schemas/form.ts';
import { editionWords } from '../forms/edition.ts';
import {
  answeredVersion,
  broken,
  formNote,
  type Outcome,
  type ReadResponse,
  readFilled,
  responseFaults,
} from './form-note.ts';
import { formOf } from './form-version.ts';

/** `form check-response FORM FILE`: every fault of a filled form, one a line, with its place, path and what to do. */
export const formCheckResponse = (root: string, name: string, file: string): Promise<Outcome> =>
  withResponse(root, name, file, (form, response) => {
    const faults = responseFaults(form, response);
    return faults.length > 0 ? broken(faults) : { text: `No fault: it answers ${editionWords(form)}.`, code: 0 };
  });

/** `form note FORM FILE`: the note of a filled form of a release or draft. */
export const formNoteOf = (root: string, name: string, file: string): Promise<Outcome> =>
  withResponse(root, name, file, formNote);

async function withResponse(
  root: string,
  name: string,
  file: string,
  use: (form: Form, response: ReadResponse) => Outcome,
): Promise<Outcome> {
  const response = await readFilled(file);
  if ('text' in response) return response;
  const form = formFor(root, name, response.value);
  return 'text' in form ? form : use(form, response);
}

/** Without a version in its name the form is the one that the answers name, if there is such a release. */
function formFor(root: string, name: string, response: unknown): Form | Outcome {
  const version = answeredVersion(response);
  if (name.includes('@') || version === undefined) return formOf(root, name);
  const answered = formOf(root, `${name}@${version}`);
  return 'text' in answered ? formOf(root, name) : answered;
}
