import { readFile } from 'node:fs/promises';
import { text as textOf } from 'node:stream/consumers';
import type { Form } from '../../schemas/form.ts';
import { editionWords } from '../forms/edition.ts';
import { questionnaire } from '../forms/questionnaire.ts';
import { checkResponse } from '../forms/response-check/check-response.ts';
import { isGroup, pathText } from '../forms/response-check/fault.ts';
import { faultLine } from '../library/faults.ts';
import type { Outcome } from './form-note.ts';
import { formOf } from './form-version.ts';
import { readJson } from './json-text.ts';

/** `form check-response FORM FILE`: every fault of a filled form, one a line, with its place, path and what to do. */
export async function formCheckResponse(root: string, name: string, file: string): Promise<Outcome> {
  const text = await readText(file);
  if (text === undefined)
    return { text: `${file}:1:1  The filled form cannot be read. Give the path of a file.`, code: 1 };
  const { value, faults, placeOf } = readJson(file, text);
  if (value === undefined || faults.length > 0) return { text: faults.map(faultLine).join('\n'), code: 1 };
  const form = formFor(root, name, value);
  if ('text' in form) return form;
  const wrong = checkResponse(questionnaire(form), value);
  if (wrong.length === 0) return { text: `No fault: it answers ${editionWords(form)}.`, code: 0 };
  const lines = wrong.map(({ path, message }) => {
    return faultLine({ ...placeOf(path), rule: 'response', message: `${pathText(path)}  ${message}` });
  });
  return { text: lines.join('\n'), code: 1 };
}

/** Without a version in its name the form is the one that the answers name, if there is such a release. */
function formFor(root: string, name: string, response: unknown): Form | Outcome {
  const said = isGroup(response) ? response['questionnaire'] : undefined;
  const version = typeof said === 'string' ? said.split('|')[1] : undefined;
  if (name.includes('@') || version === undefined) return formOf(root, name);
  const answered = formOf(root, `${name}@${version}`);
  return 'text' in answered ? formOf(root, name) : answered;
}

async function readText(file: string): Promise<string | undefined> {
  try {
    const text = await (file === '-' ? textOf(process.stdin) : readFile(file, 'utf8'));
    return text.replace(/^\uFEFF/, '');
  } catch {
    return undefined;
  }
}
