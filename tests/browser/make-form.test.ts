/** The page that makes forms, in a real browser: what it makes is what Node makes. */
import { AxeBuilder } from '@axe-core/playwright';
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import type { Form } from '../../schemas/form.ts';
import { formDefinition } from '../../schemas/form-definition.ts';
import type { MakeEnding } from '../../src/client/make-file-list.ts';
import { codebook } from '../../src/forms/codebook.ts';
import { formDocx } from '../../src/forms/docx/docx.ts';
import { buildForm } from '../../src/forms/form.ts';
import { formPdf } from '../../src/forms/pdf.ts';
import { formText } from '../../src/forms/plain/text.ts';
import { questionnaire } from '../../src/forms/questionnaire.ts';
import { responseSchema } from '../../src/forms/response-schema.ts';
import { unzipped } from '../../src/forms/zip.ts';
import { sha256 } from '../../src/library/hash.ts';
import { requireLibrary } from '../../src/library/load.ts';
import { widgets } from '../fixtures/pdf-fields.ts';
import { pages } from '../fixtures/pdf-text.ts';
import { openSites, type Manner } from './open-sites.ts';

const sites = openSites();
const library = requireLibrary('content');

const onPage = <T>(hash: string, see: (page: Page) => Promise<T>, manner: Manner = {}): Promise<T> =>
  sites.visit('sub', `forms/make/${hash}`, manner, see);

/** Asks again until it is so: a busy machine may take its time. */
const soon = <T>(see: () => T): ReturnType<typeof expect.poll<T>> => expect.poll(see, { timeout: 20_000 });

const said = (page: Page): Promise<string> => page.locator('.said').innerText();
const behind = (page: Page): Promise<string> => page.evaluate<string>('location.hash');

async function choose(page: Page, exam: string, title: string): Promise<void> {
  await page.locator('select[name=exam]').selectOption(exam);
  await page.locator('.made-form').waitFor();
  await page.locator('[name=title]').fill(title);
  await page.locator('[name=publisher]').fill('Riverside Practice');
  await soon(() => page.locator('.made-form h2').innerText()).toBe(title);
}

async function downloaded(page: Page, ending: MakeEnding): Promise<Buffer> {
  const [download] = await Promise.all([
    page.waitForEvent('download', { timeout: 60_000 }),
    page.locator(`[data-ending="${ending}"]`).click(),
  ]);
  expect(download.suggestedFilename()).toBe(`our-short-visit.${ending}`);
  return readFileSync(await download.path());
}

const json = (value: unknown): string => `${JSON.stringify(value, undefined, 2)}\n`;

/** What Node writes of a form. */
const byNode: Partial<Record<MakeEnding, (form: Form) => string | Promise<Uint8Array>>> = {
  'questionnaire.json': (form) => json(questionnaire(form)),
  'schema.json': (form) => json(responseSchema(form)),
  'codebook.csv': codebook,
  docx: formDocx,
  txt: formText,
  'form.json': (form) => `${JSON.stringify(form)}\n`,
};

/**
 * All that is set and asked of a PDF: the typesetter's browser build leaves out one thing that only PDF/UA asks for, the
 * box around a tagged picture, so that the bytes of forms with body charts differ there.
 */
const shown = async (pdf: Uint8Array): Promise<unknown> => ({
  pages: await pages(new Uint8Array(pdf)),
  fields: await widgets(new Uint8Array(pdf)),
});

interface Manifest {
  contentHash: string;
  files: { name: string; sha256: string }[];
}

/** The live part has every item of the form in its order, a mark for each section, and the code of its content. */
async function showsForm(page: Page, form: Form): Promise<void> {
  const items = form.sections.flatMap((section) => section.items);
  await soon(() => said(page)).toContain(`${items.length} items`);
  expect(await page.locator('.made-items .what a').allInnerTexts()).toEqual(items.map(({ title }) => title));
  expect(await page.locator('.made-form .part > h3 .mark').count()).toBe(form.sections.length);
  expect(await page.locator('.identity').innerText()).toContain(form.hash.slice(0, 8));
}

describe('a form made in the browser', () => {
  it('is the form that Node makes of its definition: the same bytes in every format, the same text and fields in the PDF', async () => {
    await onPage('', async (page) => {
      await choose(page, 'short-visit', 'Our short visit');
      // The archive holds every other file, so that each is made once.
      const files = new Map(
        unzipped(await downloaded(page, 'zip')).map(({ path, bytes }) => [
          path.split('/')[1] ?? '',
          Buffer.from(bytes),
        ]),
      );
      const file = (ending: string): Buffer => files.get(`our-short-visit.${ending}`) ?? Buffer.of();
      const definition = formDefinition.parse(parse(file('yaml').toString()));
      const form = buildForm({ ...library, forms: [...library.forms, definition] }, definition.id);
      for (const [ending, write] of Object.entries(byNode))
        expect(file(ending).equals(Buffer.from(await write(form))), ending).toBe(true);
      expect(await shown(file('a4.pdf'))).toEqual(await shown(await formPdf(form, 'a4')));
      const manifest = JSON.parse(files.get('manifest.json')?.toString() ?? '') as Manifest;
      expect(manifest.contentHash).toBe(form.hash);
      expect(manifest.files).toHaveLength(files.size - 1);
      for (const { name, sha256: sum } of manifest.files) expect(sha256(files.get(name) ?? ''), name).toBe(sum);
      expect((await downloaded(page, 'codebook.csv')).equals(file('codebook.csv'))).toBe(true);
      await showsForm(page, form);
    });
  });

  it('fetches nothing before a control is used, and the typesetter only for a PDF', async () => {
    await onPage('', async (page) => {
      const asked: string[] = [];
      page.on('request', (request) => asked.push(new URL(request.url()).pathname));
      await page.reload({ waitUntil: 'networkidle' });
      expect(asked.filter((path) => /worker|library\.json|\.ttf|\.wasm/.test(path))).toEqual([]);
      await choose(page, 'intake', 'Our short visit');
      await downloaded(page, 'txt');
      expect(asked.filter((path) => path.endsWith('library.json'))).toHaveLength(1);
      expect(asked.filter((path) => /\.ttf|\.wasm|pdf|docx|yaml/.test(path))).toEqual([]);
    });
  });
});

describe('choosing', () => {
  it('takes single manoeuvres by the keyboard alone, and tells each fault beside its field', async () => {
    await onPage('', async (page) => {
      await page.locator('.filter').focus();
      await page.keyboard.type('jvp');
      await soon(() => page.locator('.found').innerText()).toMatch(/^\d found\.$/);
      await page.locator('[value=jugular-venous-pressure]').focus();
      await page.keyboard.press('Space');
      await soon(() => said(page)).toMatch(/^\d+ items, /);
      expect(await page.locator('.made-form').innerText()).toContain('jugular venous pressure');
      expect(await page.locator('.fault:not(:empty)').count()).toBe(0);
      await page.locator('[data-ending=txt]').focus();
      await page.keyboard.press('Enter');
      await soon(() => page.locator('.told').innerText()).toMatch(/^Not made yet\. /);
      expect(await page.locator('.fault:not(:empty)').evaluateAll((all) => all.map(({ id }) => id))).toEqual([
        'make-title-fault',
        'make-purpose-fault',
        'make-publisher-fault',
      ]);
      expect(await page.evaluate('document.activeElement.name')).toBe('title');
      await page.keyboard.type('Neck veins');
      await soon(() => page.locator('#make-title-fault').innerText()).toBe('');
      expect(await page.locator('[name=title]').getAttribute('aria-invalid')).toBeNull();
    });
  });

  it('takes manoeuvres off an examination and says so on the form', async () => {
    await onPage('', async (page) => {
      await choose(page, 'chest-pain', 'Ours');
      const box = page.locator('input[name=manoeuvres]:checked').first();
      await box.evaluate((node) => node.closest('details')?.setAttribute('open', ''));
      const label = (await box.locator('xpath=..').innerText()).trim();
      await box.uncheck();
      await page.getByText(`Taken off the examination that it was made from: ${label}.`).waitFor();
      expect(await page.locator('.made-form .must-not-miss li').count()).toBeGreaterThan(0);
    });
  });
});

describe('the address', () => {
  it('holds nothing until asked, then all of it; opened, it brings the form back; it goes with the next choice', async () => {
    const link = await onPage('', async (page) => {
      await choose(page, 'short-visit', 'Größe & Maß');
      expect(await behind(page)).toBe('');
      await page.locator('.copy').click();
      await soon(() => behind(page)).toMatch(/^#exam=short-visit&title=.*&sum=/);
      return behind(page);
    });
    await onPage(link, async (page) => {
      await soon(() => page.locator('.made-form h2').innerText()).toBe('Größe & Maß');
      expect(await page.locator('[name=publisher]').inputValue()).toBe('Riverside Practice');
      await page.locator('[name=start]').selectOption('supine');
      expect(await behind(page)).toBe('');
      await page.locator('.clear').click();
      expect(await page.locator('[name=title]').inputValue()).toBe('');
      await page.locator('.made-form').waitFor({ state: 'hidden' });
    });
  });

  it('when it is damaged is told so, with a form that can be used', async () => {
    await onPage('#exam=short-visit&without=gait&sum=zzz', async (page) => {
      await soon(() => said(page)).toMatch(/^This link is damaged, .* A stock form is shown instead\. \d+ items/);
      expect(await page.locator('select[name=exam]').inputValue()).toBe('adult-screening');
      expect(await page.locator('.made-items > li').count()).toBeGreaterThan(20);
    });
  });
});

describe('at the width of a phone', () => {
  it('has nothing amiss for a screen reader, and nothing to scroll sideways', async () => {
    await onPage(
      '',
      async (page) => {
        await choose(page, 'chest-pain', 'Ours');
        await page.locator('[name=url]').fill('x');
        await page.locator('[data-ending=txt]').click();
        await page
          .locator('details')
          .first()
          .evaluate((node) => node.setAttribute('open', ''));
        expect(await page.locator('#make-url-fault').innerText()).toContain('https://');
        const { violations } = await new AxeBuilder({ page }).analyze();
        expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
        expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(390);
      },
      { width: 390 },
    );
  });
});

describe('with scripts off', () => {
  it('says what else there is', async () => {
    await onPage(
      '',
      async (page) => {
        expect(await page.locator('main').innerText()).toContain('npm run new -- form');
        expect(await page.locator('noscript a, main a[href$="/forms/"]').first().isVisible()).toBe(true);
        expect(await page.locator('form').count()).toBe(1);
        expect(await page.locator('form').isVisible()).toBe(false);
      },
      { scripts: false },
    );
  });
});
