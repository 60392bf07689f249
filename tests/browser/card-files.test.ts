/** Pocket cards as a user takes them away, from the page of the sets to the file. Sizes: ISO 216 (A4, A6), ANSI (Letter). */
import { describe, expect, it } from 'vitest';
import { cardsOf } from '../../src/cards/cards.ts';
import { requireLibrary } from '../../src/library/load.ts';
import { pages } from '../fixtures/pdf-text.ts';
import { editions } from '../site.ts';
import { editionNames, openSites } from './open-sites.ts';

const sites = openSites();
const library = requireLibrary('content');
const sets = library.cardSets;

/** Width and height of a sheet in millimetres, either way round. */
const sizes = { a6: [105, 148], index: [76.2, 127], a4: [210, 297], letter: [215.9, 279.4] } as const;

const millimetres = (points: number): number => (points * 25.4) / 72;

describe.each(editionNames)('in the site built as %s', (edition) => {
  it('the page of the sets leads to every set, to read and in every size', async () => {
    await sites.visit(edition, 'cards/', {}, async (page) => {
      const hrefs = await page
        .locator('main a')
        .evaluateAll<string[], Element>((links) => links.map((link) => link.getAttribute('href') ?? ''));
      const wanted = sets.flatMap(({ id }) => [`${id}/`, ...Object.keys(sizes).map((size) => `${id}.${size}.pdf`)]);
      expect(wanted.length).toBeGreaterThan(5);
      for (const address of wanted) expect(hrefs).toContain(`${editions[edition]}cards/${address}`);
    });
  });

  // The editions have the same files (same-bytes.test.ts): every set in one of them is enough.
  const some = edition === 'sub' ? sets : sets.slice(0, 2);

  it.each(some)('the page of "$id" has its cards with cautions, and downloads them', async ({ id }) => {
    await sites.visit(edition, `cards/${id}/`, {}, async (page) => {
      const cards = page.locator('.pocket-card');
      expect(await cards.count()).toBe(cardsOf(library, id).length);
      expect(await page.locator('.pocket-card:not(:has(.cautions)) h2').allInnerTexts()).toEqual([]);
      const [file] = await Promise.all([page.waitForEvent('download'), page.locator('.decks a').first().click()]);
      expect(file.suggestedFilename()).toBe(`${id}.a6.pdf`);
      expect(await file.failure()).toBeNull();
    });
  });

  it.each(
    some.flatMap(({ id }) => Object.entries(sizes).map(([size, [width, height]]) => ({ id, size, width, height }))),
  )(
    '$id, $size, is served as a PDF on sheets of $width × $height mm, front and back',
    async ({ id, size, width, height }) => {
      const answer = await fetch(`${sites.url(edition)}cards/${id}.${size}.pdf`);
      expect(answer.status).toBe(200);
      expect(answer.headers.get('content-type')).toBe('application/pdf');
      const bytes = new Uint8Array(await answer.arrayBuffer());
      expect(new TextDecoder().decode(bytes.slice(0, 5))).toBe('%PDF-');
      const sheets = await pages(bytes);
      expect(sheets.length).toBeGreaterThan(1);
      expect(sheets.length % 2).toBe(0);
      for (const sheet of sheets) {
        const sides = [sheet.width, sheet.height].map(millimetres).toSorted((a, b) => a - b);
        expect(sides[0]).toBeCloseTo(width, 0);
        expect(sides[1]).toBeCloseTo(height, 0);
        expect(sheet.items.length).toBeGreaterThan(0);
      }
    },
  );
});
