/** What comes out of the printer from one page of each kind that is printed: all of it, and nothing that leads elsewhere. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { safetyLine } from '../../src/layouts/safety-line.ts';
import { bare, bareText, pages, type PageText } from '../fixtures/pdf-text.ts';
import { openSites } from './open-sites.ts';
import { requireLibrary } from '../../src/library/load.ts';
import { manoeuvresOf } from '../../src/plan/manoeuvres-of.ts';

const sites = openSites();

/** How many manoeuvres the screening examination holds: what grows with it may take sheets in proportion. */
const library = requireLibrary('content');
const screening = library.forms.find(({ id }) => id === 'adult-screening');
const screeningItems = screening === undefined ? 0 : manoeuvresOf(library, screening).length;

/** Pages that are printed, and how many sheets of A4 each may take. */
const printed = [
  { path: 'protocols/neck/jugular-venous-pressure/', most: 4 },
  { path: 'protocols/abdomen/kidneys/', most: 3 },
  { path: 'protocols/neck/', most: 24 },
  { path: 'cards/neck/', most: 9 },
  { path: 'forms/adult-screening/', most: Math.ceil(0.8 * screeningItems) },
  { path: 'plan/adult-screening/', most: Math.ceil(0.45 * screeningItems) },
];

/** Characters on a sheet that is worth its paper: about 130 of furniture, and more than a line. */
const leastOnSheet = 220;

/** Widths of the sheet at 96 dots an inch. */
const papers = { A4: 794, Letter: 816 } as const;

/** How many more sheets a paper may take than A4: Letter is 18 mm shorter, and its last lines start new sheets. */
const shorter = { A4: 1, Letter: 1.12 } as const;

const onPaper = <T>(path: string, width: number, see: (page: Page) => Promise<T>): Promise<T> =>
  sites.visit('sub', path, { width }, async (page) => {
    await page.emulateMedia({ media: 'print' });
    return see(page);
  });

const sheetsOf = async (path: string, format: keyof typeof papers): Promise<PageText[]> =>
  pages(new Uint8Array(await sites.visit('sub', path, {}, (page) => page.pdf({ format }))));

/** What is still shown of what leads elsewhere or is worked by hand. */
const leftovers = `[...document.querySelectorAll('nav, .skip, .foot, button, input, select, look-up, .not-on-paper')]
  .filter((node) => node.checkVisibility() && node.getBoundingClientRect().height > 0)
  .map((node) => node.outerHTML.slice(0, 120))`;

/** What stands out of the sheet at the right, or is cut by a frame of its own. */
const cutOff = `[...document.querySelectorAll('body *')]
  .filter((node) => node.closest('.out-of-sight, svg') === null && node.getBoundingClientRect().width > 0)
  .filter((node) => node.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5 ||
    (getComputedStyle(node).overflowX !== 'visible' && node.scrollWidth > node.clientWidth + 1))
  .map((node) => node.outerHTML.slice(0, 120))`;

/** Words of the main part that show on paper. */
const shownWords = `(() => {
  document.querySelectorAll('.out-of-sight, .not-on-paper').forEach((node) => node.remove());
  return [...document.querySelectorAll(
    ':is(.alarm, .cautions, .flags, .safety-lines, .step-body) :is(p, li, dd), .act-now')]
    .filter((node) => node.querySelector('p, li, dd') === null && node.checkVisibility())
    .map((node) => node.innerText);
})()`;

/** The furniture of a sheet, which its own words stand apart from. */
const furniture = (page: PageText): string => bareText(page).match(/Page\d+of\d+/)?.[0] ?? 'none';

describe.each(printed)('on paper, /$path', ({ path, most }) => {
  it('shows nothing that leads elsewhere', async () => {
    expect(await onPaper(path, papers.A4, (page) => page.evaluate<string[]>(leftovers))).toEqual([]);
  });

  it.each(Object.entries(papers))('cuts nothing off on %s', async (_paper, width) => {
    const [wide, cut] = await onPaper(path, width, async (page) => [
      await page.evaluate<number>('document.documentElement.scrollWidth'),
      await page.evaluate<string[]>(cutOff),
    ]);
    expect(wide).toBeLessThanOrEqual(width);
    expect(cut).toEqual([]);
  });

  it.each(['A4', 'Letter'] as const)(
    'has on every sheet of %s its safety line, edition and number, and something to say',
    async (format) => {
      const sheets = await sheetsOf(path, format);
      expect(sheets.length).toBeLessThanOrEqual(Math.ceil(most * shorter[format]));
      for (const [i, sheet] of sheets.entries()) {
        const text = bareText(sheet);
        expect(text).toContain(bare(safetyLine));
        expect(text).toMatch(/Fingerbreadth\d+\.\d+\.\d+/);
        expect(furniture(sheet)).toBe(`Page${i + 1}of${sheets.length}`);
        expect(text.length).toBeGreaterThan(leastOnSheet);
      }
    },
  );

  it('has every red flag and caution of the page', async () => {
    const words = await onPaper(path, papers.A4, (page) => page.evaluate<string[]>(shownWords));
    expect(words.length).toBeGreaterThan(2);
    const text = (await sheetsOf(path, 'A4')).map(bareText).join('');
    expect(words.filter((line) => !text.includes(bare(line)))).toEqual([]);
  });
});
