/** The setting of a page on screen and on paper, as a reader meets it, in a real browser. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { safetyLine } from '../../src/layouts/safety-line.ts';
import { launchChromium } from '../chromium.ts';
import { bare, bareText, pages as pagesOf } from '../fixtures/pdf-text.ts';
import { serveFolder, type Served } from '../serve.ts';
import { editions, siteFolder } from '../site.ts';

const manoeuvre = 'protocols/neck/jugular-venous-pressure/';
const system = 'protocols/neck/';

let browser: Browser;
let site: Served;

beforeAll(async () => {
  browser = await launchChromium();
  site = await serveFolder(siteFolder('sub'), editions.sub);
});

afterAll(async () => {
  await browser.close();
  await site.close();
});

interface Look {
  width?: number;
  dark?: boolean;
  scripts?: boolean;
}

/** Opens a page, hands it over and closes it; fails on an error of the page or a request to elsewhere. */
async function look<T>(
  path: string,
  { width = 390, dark = false, scripts = true }: Look,
  see: (page: Page) => Promise<T>,
): Promise<T> {
  const context = await browser.newContext({
    viewport: { width, height: 844 },
    colorScheme: dark ? 'dark' : 'light',
    javaScriptEnabled: scripts,
  });
  const page = await context.newPage();
  const amiss: string[] = [];
  page.on('pageerror', ({ message }) => amiss.push(message));
  page.on('console', (message) => message.type() === 'error' && amiss.push(message.text()));
  page.on('request', (request) => !request.url().startsWith(site.url) && amiss.push(request.url()));
  await page.goto(site.url + path);
  await page.evaluate('document.fonts.ready');
  const seen = await see(page);
  await context.close();
  expect(amiss).toEqual([]);
  return seen;
}

describe('a manoeuvre', () => {
  it('reads the same with scripts off', async () => {
    const words = (page: Page) => page.evaluate<string>("document.querySelector('main').innerText");
    expect(await look(manoeuvre, { scripts: false }, words)).toBe(await look(manoeuvre, {}, words));
  });

  it('keeps lines of 60 to 70 characters where there is room', async () => {
    const longest = await look(manoeuvre, { width: 1280 }, (page) => page.evaluate<number>(charactersInLine));
    expect(longest).toBeGreaterThanOrEqual(60);
    expect(longest).toBeLessThanOrEqual(70);
  });

  it('hangs its labels in the margin where there is one, and runs them in on a phone', async () => {
    const places = (page: Page) => page.evaluate<[number, number, number, number]>(labelAndText);
    const [label, text, labelTop, textTop] = await look(manoeuvre, { width: 1280 }, places);
    expect(label).toBeLessThan(text - 150);
    expect(Math.abs(labelTop - textTop)).toBeLessThan(6);
    const [, , phoneLabelTop, phoneTextTop] = await look(manoeuvre, {}, places);
    expect(Math.abs(phoneLabelTop - phoneTextTop)).toBeLessThan(6);
  });

  it('has its position mark at the outer edge, at a height of its own', async () => {
    const edge = (path: string) => look(path, { width: 1280 }, (page) => page.evaluate<[number, number]>(markAtEdge));
    const [right, top] = await edge(manoeuvre);
    expect(right).toBe(1280);
    const [otherRight, otherTop] = await edge('protocols/abdomen/spleen-tip/');
    expect(otherRight).toBe(1280);
    expect(otherTop).toBeGreaterThan(top);
  });

  it('shows nothing bright in the dark: no ground above a tenth of white', async () => {
    const grounds = await look(manoeuvre, { dark: true }, (page) => page.evaluate<string[]>(largeGrounds));
    expect(grounds.length).toBeGreaterThan(0);
    const bright = grounds.filter((ground) => brightest(ground) > 90);
    expect(bright).toEqual([]);
  });
});

const brightest = (rgb: string): number => Math.max(...[...rgb.matchAll(/\d+/g)].slice(0, 3).map(Number));

/** Characters of running text in a line of the text column. */
const charactersInLine = `(() => {
  const caution = document.querySelector('#cautions > div');
  const probe = document.createElement('span');
  probe.textContent = document.querySelector('#technique').textContent.replace(/\\s+/g, ' ');
  caution.append(probe);
  const measured = new Range();
  measured.selectNodeContents(probe);
  const lines = new Set([...measured.getClientRects()].map(({ top }) => Math.round(top))).size;
  return probe.textContent.length / (lines - 0.5);
})()`;

/** Left ends of a label and of its text, and the tops of their first lines. */
const labelAndText = `(() => {
  const label = document.querySelector('#normal > h2').getBoundingClientRect();
  const range = new Range();
  range.selectNodeContents(document.querySelector('#normal li'));
  const text = range.getClientRects()[0];
  return [label.left, text.left, label.top, text.top];
})()`;

const markAtEdge = `(({ right, top }) => [right, top])(document.querySelector('.thumb').getBoundingClientRect())`;

/** Grounds of everything that covers at least a fiftieth of the screen. */
const largeGrounds = `[...document.querySelectorAll('html, body, body *')]
  .filter((node) => node.getBoundingClientRect().bottom > 0)
  .filter((node) => node.getBoundingClientRect().width * node.getBoundingClientRect().height > (390 * 844) / 50)
  .map((node) => getComputedStyle(node).backgroundColor)
  .filter((ground) => ground.startsWith('rgb('))`;

describe('on paper', () => {
  const print = async (path: string) =>
    new Uint8Array(await look(path, {}, (page) => page.pdf({ format: 'A4', preferCSSPageSize: true })));

  it('every sheet of a manoeuvre says whom it is for, which edition it is and which page of how many', async () => {
    const sheets = await pagesOf(await print(manoeuvre));
    expect(sheets.length).toBeLessThanOrEqual(4);
    for (const [i, sheet] of sheets.entries()) {
      const text = bareText(sheet);
      expect(text).toContain(bare(safetyLine));
      expect(text).toMatch(/Fingerbreadth\d+\.\d+\.\d+·.*reviewed\d{4}-\d\d-\d\d/);
      expect(text).toContain(`Page${String(i + 1)}of${String(sheets.length)}`);
    }
  });

  it('a system comes whole: each of its entries with red flags, cautions and technique', async () => {
    const text = (await pagesOf(await print(system))).map(bareText).join('');
    const heads = `[...document.querySelectorAll('.on-paper > .title h2')].map((head) => head.textContent)`;
    const titles = await look(system, {}, (page) => page.evaluate<string[]>(heads));
    expect(titles.length).toBeGreaterThan(5);
    for (const title of titles) expect(text).toContain(bare(title));
    expect(text.split('Cautions').length - 1).toBeGreaterThanOrEqual(titles.length);
  });

  it('leaves out what leads elsewhere', async () => {
    const text = (await pagesOf(await print(manoeuvre))).map(bareText).join('');
    expect(text).not.toContain('Onpaper');
    expect(text).not.toContain('Skiptothetext');
  });
});
