/** With scripts off everything that is read stays readable, and what needs scripts says so and leads on. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { oneOfEachKind } from './kinds.ts';
import { editionNames, openSites } from './open-sites.ts';

const sites = openSites();

/** Words of the main part, without those of its live parts. */
const words = (page: Page): Promise<string> =>
  page.evaluate<string>(`(() => {
    const live = 'look-up, run-sheet-maker, run-sheet-walk, print-sheet, form-note, observer-agreement, form-maker';
    const parts = ['check-copy .with-scripts', 'compare-versions .with-scripts', 'compare-versions .without-scripts'];
    document.querySelectorAll([live, ...parts].join()).forEach((node) => node.remove());
    return document.querySelector('main').innerText.replace(/\\s+/g, ' ');
  })()`);

describe.each(oneOfEachKind('sub'))('with scripts off, a page of kind "$kind" (/$path)', ({ path }) => {
  it('reads the same', async () => {
    const off = await sites.visit('sub', path, { scripts: false }, words);
    expect(off.length).toBeGreaterThan(40);
    expect(off).toBe(await sites.visit('sub', path, {}, words));
  });
});

describe.each(editionNames)('with scripts off, in the site built as %s', (edition) => {
  it.each(['', 'search/'])('/%s says that look-up needs scripts, and leads to the A–Z', async (path) => {
    await sites.visit(edition, path, { scripts: false }, async (page) => {
      const note = page.locator('noscript p', { hasText: 'Look-up needs scripts, and they are off.' });
      expect(await note.isVisible()).toBe(true);
      await note.locator('a').click();
      await page.waitForURL(`${sites.url(edition)}a-z/`);
      const entry = page.locator('main a', { hasText: 'JVP' }).first();
      await entry.click();
      await page.waitForURL(`${sites.url(edition)}protocols/neck/jugular-venous-pressure/`);
    });
  });

  it('shows no control that does nothing', async () => {
    await sites.visit(edition, 'search/', { scripts: false }, async (page) => {
      expect(await page.locator('select:visible, .to-address:visible, .clear:visible, .more:visible').count()).toBe(0);
    });
  });
});
