import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { formNote, type Outcome, readFilled } from '../../../src/cli/form-note.ts';
import { noteOf } from '../../../src/forms/note.ts';
import { questionnaireResponse } from '../../../src/forms/response.ts';
import { fixtureForm } from '../forms/fixtures.ts';

const form = fixtureForm();
const filled = new Map([
  ['finding-none', 'A'],
  ['finding-none.detail', 'hard'],
]);
const response = questionnaireResponse(form, filled, '2026-11-25T10:00:00Z');

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'form-note-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

/** Puts words into a file and gives its name. */
function file(name: string, words: string): string {
  const path = join(folder, name);
  writeFileSync(path, words);
  return path;
}

/** The note of a file, as the command gives it. */
async function noteOfFile(path: string): Promise<Outcome> {
  const read = await readFilled(path);
  return 'text' in read ? read : formNote(form, read);
}

describe('the command that gives the note of a filled form', () => {
  it('prints the note, also of a file with a byte order mark', async () => {
    const note = noteOf(form, filled).trimEnd();
    expect(await noteOfFile(file('good.json', JSON.stringify(response)))).toEqual({ text: note, code: 0 });
    expect(await noteOfFile(file('mark.json', `\uFEFF${JSON.stringify(response)}`))).toEqual({
      text: note,
      code: 0,
    });
    expect(note).toContain('ABNORMAL: hard');
  });

  it('says that there is no note where nothing was answered', async () => {
    const blank = questionnaireResponse(form, new Map(), '2026-11-25T10:00:00Z');
    const { text, code } = await noteOfFile(file('blank.json', JSON.stringify(blank)));
    expect([text, code]).toEqual(['Nothing was answered: there is no note.', 0]);
  });

  it.each([
    ['is not there', undefined, /^\S+missing\.json:1:1 {2}The filled form cannot be read: .+\. Give the path/],
    ['is no JSON', '{"resourceType": ', /^\S+:1:\d+ {2}This is not JSON/],
    ['answers another version', JSON.stringify({ ...response, questionnaire: `${form.url}|9.0.0` }), /expected "https/],
    [
      'names an unknown blank',
      JSON.stringify(response).replace('finding-none', 'spleen'),
      /^\S+:1:\d{2,} {2}QuestionnaireResponse\.item\S+linkId {2}The form has no item "spleen"\. Use a linkId/,
    ],
  ])('prints the fault with its place and no note for a file that %s', async (_what, words, fault) => {
    const path = words === undefined ? join(folder, 'missing.json') : file('bad.json', words);
    const { text, code } = await noteOfFile(path);
    expect(code).toBe(1);
    expect(text).toMatch(fault);
    expect(text).not.toContain('ABNORMAL');
  });
});
