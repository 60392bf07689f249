import { readFile } from 'node:fs/promises';
import { text as textOf } from 'node:stream/consumers';
import type { Form } from '../../schemas/form.ts';
import { noteOf } from '../forms/note.ts';
import { questionnaire } from '../forms/questionnaire.ts';
import { checkResponse } from '../forms/response-check/check-response.ts';
import { isGroup, pathText } from '../forms/response-check/fault.ts';
import { readResponse } from '../forms/response-answers.ts';
import { type Fault, faultLine } from '../library/faults.ts';
import { type JsonText, readJson } from './json-text.ts';

/** What a run of a command prints, and its exit code. */
export interface Outcome {
  text: string;
  code: 0 | 1;
}

/** A filled form as it was read, with the places of its parts. */
export interface ReadResponse extends Pick<JsonText, 'placeOf'> {
  value: unknown;
}

/** Reads a filled form from a file, or from standard input where the name is `-`. Faults that keep it from being read are an outcome. */
export async function readFilled(name: string): Promise<ReadResponse | Outcome> {
  const text = await readText(name);
  if (typeof text !== 'string') return broken([text]);
  const { value, faults, placeOf } = readJson(name, text);
  return value === undefined || faults.length > 0 ? broken(faults) : { value, placeOf };
}

/** The version that a filled form says it answers, if it says any. */
export function answeredVersion(value: unknown): string | undefined {
  const said = isGroup(value) ? value['questionnaire'] : undefined;
  return typeof said === 'string' ? said.split('|')[1] : undefined;
}

/** Every fault of a filled form against its form, with its place, path and what to do. */
export const responseFaults = (form: Form, { value, placeOf }: ReadResponse): Fault[] =>
  checkResponse(questionnaire(form), value).map(({ path, message }) => {
    return { ...placeOf(path), rule: 'response', message: `${pathText(path)}  ${message}` };
  });

/**
 * `form note FORM RESPONSE.json`: the note of a filled form, a FHIR R4 QuestionnaireResponse, as plain text. What could
 * not be read whole gives no note but its faults, one a line, `path:line:column  path  message`, and the code is 1; a
 * number out of range is in the note as it was given.
 */
export function formNote(form: Form, response: ReadResponse): Outcome {
  const { filled, faults } = readResponse(form, response.value);
  if (faults.length > 0) {
    const told = responseFaults(form, response);
    const unplaced = faults.map((message) => ({ ...response.placeOf([]), rule: 'response', message }));
    return broken(told.length > 0 ? told : unplaced);
  }
  const note = noteOf(form, filled);
  return { text: note === '' ? 'Nothing was answered: there is no note.' : note.trimEnd(), code: 0 };
}

/** Faults as an outcome, one a line. */
export const broken = (faults: readonly Fault[]): Outcome => ({ text: faults.map(faultLine).join('\n'), code: 1 });

async function readText(name: string): Promise<string | Fault> {
  try {
    const text = await (name === '-' ? textOf(process.stdin) : readFile(name, 'utf8'));
    return text.replace(/^\uFEFF/, '');
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    const message = `The filled form cannot be read: ${reason}. Give the path of a file that is there.`;
    return { file: name, line: 1, column: 1, rule: 'file', message };
  }
}
