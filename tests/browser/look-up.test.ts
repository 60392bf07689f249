/**
 * Look-up in a real browser, as someone in a hurry uses it, at the root and below a path, under the site's own policy.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchChromium } from '../chromium.ts';
import { serveFolder, type Served } from '../serve.ts';
import { editions, siteFolder, type Edition } from '../site.ts';

/** Bytes, compressed, that the script of look-up may weigh before the index is fetched. */
const scriptBudget = 3 * 1024;

const jugular = 'protocols/neck/jugular-venous-pressure/';

let browser: Browser;

beforeAll(async () => {
  browser = await launchChromium();
});

afterAll(() => browser.close());

interface Visit {
  page: Page;
  /** Errors of the page and of the policy. */
  errors: string[];
  /** Requests to anywhere but the site. */
  outside: string[];
}

async function visit(url: string, options: { javaScriptEnabled?: boolean } = {}): Promise<Visit> {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, ...options });
  const page = await context.newPage();
  const seen: Visit = { page, errors: [], outside: [] };
  page.on('pageerror', (error) => seen.errors.push(error.message));
  page.on('console', (message) => message.type() === 'error' && seen.errors.push(message.text()));
  page.on('request', (request) => {
    if (new URL(request.url()).origin !== new URL(url).origin) seen.outside.push(request.url());
  });
  await page.goto(url);
  return seen;
}

const field = (page: Page) => page.locator('look-up input');
const results = (page: Page) => page.locator('look-up .results a');
const told = (page: Page) => page.locator('look-up [role=status]');

async function type(page: Page, words: string, said: string | RegExp): Promise<void> {
  await field(page).fill(words);
  await told(page).filter({ hasText: said }).waitFor();
}

describe.each(Object.keys(editions) as Edition[])('look-up, edition %s', (edition) => {
  let site: Served;

  beforeAll(async () => {
    site = await serveFolder(siteFolder(edition), editions[edition]);
  });

  afterAll(() => site.close());

  it('answers on the first page while one types, and Enter at once opens the first', async () => {
    const { page, errors, outside } = await visit(site.url);
    await field(page).pressSequentially('jvp');
    await results(page).first().waitFor();
    expect(await results(page).first().getAttribute('href')).toBe(`${editions[edition]}${jugular}`);
    await field(page).fill('');
    await field(page).pressSequentially('neck veins');
    await page.keyboard.press('Enter');
    await page.waitForURL(`${site.url}${jugular}`);
    expect(errors).toEqual([]);
    expect(outside).toEqual([]);
  });

  it('shows system, position with its mark, a marked quotation and red flags in words', async () => {
    const { page } = await visit(site.url);
    await type(page, 'tricuspid', /result/);
    const item = page.locator('look-up .results li', { has: page.locator(`a[href$="${jugular}"]`) });
    expect(await item.locator('.place').textContent()).toMatch(/^Neck · Semi-recumbent/);
    expect(await item.locator('svg path').count()).toBeGreaterThan(0);
    expect(await item.locator('mark').first().textContent()).toBe('tricuspid');
    expect(await item.locator('.flags').textContent()).toMatch(/^Red flags: \d now/);
  });

  it('is walked through by arrow keys and cleared by Escape', async () => {
    const { page } = await visit(site.url);
    await type(page, 'liver', /results/);
    const focused = () => page.evaluate(() => document.activeElement?.textContent ?? '');
    await page.keyboard.press('ArrowDown');
    expect(await focused()).toBe(await results(page).nth(0).textContent());
    await page.keyboard.press('ArrowDown');
    expect(await focused()).toBe(await results(page).nth(1).textContent());
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowUp');
    expect(await field(page).evaluate((input) => input === document.activeElement)).toBe(true);
    await page.keyboard.press('Escape');
    await page.waitForFunction(() => document.querySelectorAll('look-up .results a').length === 0);
    expect(await field(page).inputValue()).toBe('');
    expect(await told(page).textContent()).toBe('');
  });

  it('puts a slip right, and Enter takes the right words over before it opens anything', async () => {
    const { page } = await visit(site.url);
    await type(page, 'spelen', 'Did you mean spleen?');
    await page.keyboard.press('Enter');
    await told(page)
      .filter({ hasText: /^\d+ results\.$/ })
      .waitFor();
    expect(await field(page).inputValue()).toBe('spleen');
    expect(page.url()).toBe(site.url);
  });

  it('says so when there is nothing, and when only some of the words are found', async () => {
    const { page } = await visit(site.url);
    await type(page, 'xyzzy', 'Nothing for “xyzzy”.');
    expect(await results(page).count()).toBe(0);
    await type(page, 'jvp xyzzy', 'No page has all these words.');
    expect(await results(page).first().getAttribute('href')).toContain(jugular);
  });

  it('narrows by what is chosen, says how many each choice leaves, and shows more on asking', async () => {
    const { page } = await visit(`${site.url}search/`);
    await page.selectOption('look-up select[name=position]', {
      label: await labelled(page, 'position', 'Semi-recumbent'),
    });
    await results(page).first().waitFor();
    await labelled(page, 'scope', 'Screening');
    const places = await page.locator('look-up .place').allTextContents();
    expect(places.filter((place) => !/Semi-recumbent|Any position/.test(place))).toEqual([]);
    await page.click('look-up .clear');
    await type(page, 'neck', /^\d{2,} results/);
    const before = await results(page).count();
    await page.click('look-up .more');
    await results(page).nth(before).waitFor();
    expect(
      await results(page)
        .nth(before)
        .evaluate((link) => link === document.activeElement),
    ).toBe(true);
  });

  it('keeps words and choices out of the address until asked, and clears them from it', async () => {
    const { page } = await visit(`${site.url}search/`);
    await type(page, 'goiter', /result/);
    await page.keyboard.press('ArrowDown');
    expect(page.url()).toBe(`${site.url}search/`);
    await page.click('look-up .to-address');
    expect(page.url()).toBe(`${site.url}search/#q=goiter`);
    await page.click('look-up .clear');
    expect(page.url()).toBe(`${site.url}search/`);
    expect(await page.evaluate(() => localStorage.length + sessionStorage.length + document.cookie.length)).toBe(0);
  });

  it('takes words from behind # and, out of what hosts see, from where a link put them', async () => {
    const linked = await visit(`${site.url}search/#q=goiter&scope=Screening`);
    await results(linked.page).first().waitFor();
    expect(await linked.page.locator('select[name=scope]').inputValue()).toBe('Screening');
    const sent = await visit(`${site.url}search/?q=goiter`);
    await results(sent.page).first().waitFor();
    expect(await field(sent.page).inputValue()).toBe('goiter');
    expect(sent.page.url()).toBe(`${site.url}search/`);
  });

  it('says without scripts that it needs them, and leads to the A–Z', async () => {
    const { page } = await visit(site.url, { javaScriptEnabled: false });
    await field(page).fill('jvp');
    await page.click('look-up button[type=submit]');
    // The field has no name, so that what is typed never reaches an address that hosts log.
    await expect.poll(() => page.url()).toBe(`${site.url}search/?`);
    const note = page.locator('look-up .note', { hasText: 'Look-up needs scripts' });
    expect(await note.isVisible()).toBe(true);
    await note.locator('a').click();
    expect(page.url()).toBe(`${site.url}a-z/`);
  });

  it('says so when the index cannot be fetched', async () => {
    const { page } = await visit(site.url);
    await page.route('**/pagefind/**', (route) => route.abort());
    await field(page).fill('jvp');
    await page.locator('look-up .failed').waitFor();
    expect(await page.locator('look-up .failed a').getAttribute('href')).toBe(`${editions[edition]}a-z/`);
  });

  it('lets another script ask the index with its own options, worker included', async () => {
    const { page, errors } = await visit(site.url);
    // As text: the test runner would put its own import in place of the page's.
    const address = await page.evaluate(`(async () => {
      const script = await import('${editions[edition]}pagefind/pagefind.js');
      const { results } = await script.search('jvp');
      return (await results[0].data()).url;
    })()`);
    expect(address).toBe(`${editions[edition]}${jugular}`);
    expect(errors).toEqual([]);
  });

  it.each(['light', 'dark'] as const)('passes axe with results, %s', async (colorScheme) => {
    const { page } = await visit(`${site.url}search/`);
    await page.emulateMedia({ colorScheme });
    await type(page, 'spelen', 'Did you mean');
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  });

  it('weighs no more than its budget before the index is fetched', () => {
    const folder = join(siteFolder(edition), '_astro');
    const html = readFileSync(join(siteFolder(edition), 'index.html'), 'utf8');
    const scripts = readdirSync(folder).filter((name) => name.endsWith('.js') && html.includes(name));
    expect(scripts.length).toBeGreaterThan(0);
    const weights = scripts.map((name) => gzipSync(readFileSync(join(folder, name)), { level: 9 }).length);
    expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeLessThanOrEqual(scriptBudget);
  });
});

/** The whole label of an option that begins so, once it says how many pages it leaves. */
async function labelled(page: Page, filter: string, begins: string): Promise<string> {
  const option = page.locator(`look-up select[name=${filter}] option`, {
    hasText: new RegExp(`^${begins}.*\\(\\d+\\)$`),
  });
  await option.first().waitFor({ state: 'attached' });
  return (await option.first().textContent()) ?? '';
}

it.each(['index', 'fragment', 'filter'])(
  'the %s of the search index is the same at the root and below a path',
  (part) => {
    const files = (edition: Edition): Map<string, string> => {
      const folder = join(siteFolder(edition), 'pagefind', part);
      return new Map(readdirSync(folder).map((name) => [name, readFileSync(join(folder, name), 'base64')]));
    };
    expect(files('root').size).toBeGreaterThan(0);
    expect(files('root')).toEqual(files('sub'));
  },
);
