/** A blank form as a user takes it away: through the page's links, to be filled in, read by software, or checked by it. */
import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { parse } from 'csv-parse/sync';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { requireReleases } from '../../src/forms/releases/load.ts';
import { current } from '../../src/forms/releases/released-forms.ts';
import { filled, values, widgets } from '../fixtures/pdf-fields.ts';
import { present } from '../fixtures/present.ts';
import { editionNames, openSites } from './open-sites.ts';

const sites = openSites();
const form = 'forms/adult-screening/';
/** The release in use. */
const version = present(current(requireReleases('content').get('adult-screening'))).version;

/** Follows a link that downloads, as a click does. */
async function download(page: Page, words: string): Promise<{ name: string; bytes: Uint8Array }> {
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: words, exact: true }).click(),
  ]);
  return { name: file.suggestedFilename(), bytes: new Uint8Array(readFileSync(await file.path())) };
}

/** Something to write or choose in every field: each text its own words, each group of buttons its last answer. */
async function answersFor(bytes: Uint8Array): Promise<Map<string, string>> {
  const fields = await widgets(bytes);
  return new Map(
    fields.map(({ fieldName, fieldType, checkBox, buttonValue, multiLine, options }, i) => {
      if (fieldType === 'Tx') return [fieldName, multiLine ? `Line one\nof ${String(i)}` : `${String(i)} é`];
      if (fieldType === 'Ch') return [fieldName, present(options?.at(-1)).exportValue];
      return [fieldName, checkBox ? 'Yes' : present(buttonValue)];
    }),
  );
}

describe.each(editionNames)('in the site built as %s', (edition) => {
  it.each(['Download the blank form, A4', 'Download the blank form, US Letter'])(
    '"%s" gives a form that holds an answer in every blank',
    async (words) => {
      const { name, bytes } = await sites.visit(edition, form, {}, (page) => download(page, words));
      expect(name).toMatch(/^adult-screening\.(a4|letter)\.pdf$/);
      const answers = await answersFor(bytes);
      expect(answers.size).toBeGreaterThan(50);
      expect(new Set((await values(bytes)).values())).not.toContain('Yes');
      const after = await values(await filled(bytes, answers));
      expect(after).toEqual(answers);
    },
  );

  it('a half-filled form keeps the rest blank', async () => {
    const { bytes } = await sites.visit(edition, form, {}, (page) => download(page, 'Download the blank form, A4'));
    const blank = await values(bytes);
    const some = new Map([...(await answersFor(bytes))].filter((_, i) => i % 3 === 0));
    expect(await values(await filled(bytes, some))).toEqual(new Map([...blank, ...some]));
  });

  it('the other files come under their names and are what they say', async () => {
    await sites.visit(edition, form, {}, async (page) => {
      const text = async (words: string) => {
        const { name, bytes } = await download(page, words);
        return { name, text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
      };
      const questionnaire = await text('Download the FHIR R4 Questionnaire');
      expect(questionnaire.name).toBe('adult-screening.questionnaire.json');
      const asked = JSON.parse(questionnaire.text) as { resourceType: string; url: string; item: unknown[] };
      expect(asked).toMatchObject({ resourceType: 'Questionnaire', status: 'active', version });
      expect(asked.url).toBe('https://fingerbreadth.example/forms/adult-screening');
      expect(asked.item.length).toBeGreaterThan(2);

      const schema = await text('Download the JSON Schema of a filled form');
      expect(schema.name).toBe('adult-screening.schema.json');
      const check = new Ajv2020({ strict: false }).compile(JSON.parse(schema.text) as object);
      expect(check({ nonsense: true })).toBe(false);

      const book = await text('Download the codebook (CSV)');
      expect(book.name).toBe('adult-screening.codebook.csv');
      const rows: Record<string, string>[] = parse(book.text, { columns: true, bom: true });
      expect(rows.length).toBeGreaterThan(50);
    });
  });

  it.each([
    ['a4.pdf', 'application/pdf'],
    ['letter.pdf', 'application/pdf'],
    ['large.pdf', 'application/pdf'],
    ['questionnaire.json', 'application/json; charset=utf-8'],
    ['schema.json', 'application/json; charset=utf-8'],
    ['codebook.csv', 'text/csv; charset=utf-8'],
  ])('a plain host tells the type of .%s by its name', async (ending, type) => {
    const answer = await fetch(`${sites.url(edition)}${form}${version}/adult-screening.${ending}`);
    expect(answer.status).toBe(200);
    expect(answer.headers.get('content-type')).toBe(type);
  });
});
