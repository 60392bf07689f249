import { readFile } from 'node:fs/promises';
import { text as textOf } from 'node:stream/consumers';
import { type FormSlice } from '../forms/form-slice.ts';
import { noteOf } from '../forms/note.ts';
import { readResponse } from '../forms/response-answers.ts';
import { type Fault, faultLine } from '../library/faults.ts';
import { readJson } from './json-text.ts';

/** What a run of a command prints, and its exit code. */
export interface Outcome {
  text: string;
  code: 0 | 1;
}

/**
 * `form note FORM RESPONSE.json`: the note of a filled form as plain text. `name` is a file with a FHIR R4
 * QuestionnaireResponse; `-` reads standard input. Faults are one a line, `path:line:column  message`, and the code is 1.
 */
export async function formNote(form: FormSlice, name: string): Promise<Outcome> {
  const text = await readText(name);
  if (typeof text !== 'string') return broken([text]);
  const { value, faults, placeOf } = readJson(name, text);
  if (value === undefined || faults.length > 0) return broken(faults);
  const { filled, faults: wrong } = readResponse(form, value);
  if (wrong.length > 0) return broken(wrong.map((message) => ({ ...placeOf([]), rule: 'response', message })));
  const note = noteOf(form, filled);
  return { text: note === '' ? 'Nothing was answered: there is no note.' : note.trimEnd(), code: 0 };
}

const broken = (faults: readonly Fault[]): Outcome => ({ text: faults.map(faultLine).join('\n'), code: 1 });

async function readText(name: string): Promise<string | Fault> {
  try {
    const text = await (name === '-' ? textOf(process.stdin) : readFile(name, 'utf8'));
    return text.replace(/^\uFEFF/, '');
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return { file: name, line: 1, column: 1, rule: 'file', message: `The response cannot be read: ${reason}.` };
  }
}
