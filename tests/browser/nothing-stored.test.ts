/** What was looked up, chosen or opened leaves nothing behind in the browser. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { builtPages, isAlike } from './kinds.ts';
import { editionNames, openSites } from './open-sites.ts';

const sites = openSites();

/** Everything a page can keep in a browser; a worker's store of the site's own files would be named here. */
const kept = `(async () => ({
  local: { ...localStorage },
  session: { ...sessionStorage },
  cookie: document.cookie,
  databases: (await indexedDB.databases()).map(({ name }) => name),
  stores: await caches.keys(),
  workers: (await navigator.serviceWorker.getRegistrations()).length,
}))()`;

const nothing = { local: {}, session: {}, cookie: '', databases: [], stores: [], workers: 0 };

/** Types and chooses wherever a page lets one. */
async function use(page: Page): Promise<void> {
  for (const select of await page.locator('select:visible').all()) await select.selectOption({ index: 1 });
  // The fields themselves, not their places: using one may bring others.
  for (const field of await page.locator('input:visible').elementHandles()) {
    const ticked = ['checkbox', 'radio'].includes((await field.getAttribute('type')) ?? '');
    await (ticked ? field.check() : field.fill('12'));
  }
  await page.keyboard.press('Enter');
}

describe.each(editionNames)('the site built as %s', (edition) => {
  it('keeps nothing after every field on every page that has fields of its own was used', async () => {
    const pages = builtPages(edition).filter((page) => !isAlike(page));
    const withFields = pages.filter(({ html }) => /<(input|select|textarea)\b/.test(html));
    expect(withFields.length).toBeGreaterThan(1);
    for (const { path } of withFields) {
      await sites.visit(edition, path, {}, async (page) => {
        await use(page);
        await page.waitForLoadState('networkidle');
        expect(await page.evaluate(kept), path).toEqual(nothing);
        expect(await page.context().cookies()).toEqual([]);
        expect(new URL(page.url()).search).toBe('');
      });
    }
  });

  it('would be found out', async () => {
    await sites.visit(edition, '', {}, async (page) => {
      await page.evaluate('localStorage.setItem("words", "jvp")');
      expect(await page.evaluate(kept)).not.toEqual(nothing);
    });
  });
});
