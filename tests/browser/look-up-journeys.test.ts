/** From a few hurried letters to the page of a manoeuvre, and nothing of it in any address. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { editions } from '../site.ts';
import { editionNames, openSites } from './open-sites.ts';

const sites = openSites();

const journeys = [
  { typed: 'jvp', to: 'protocols/neck/jugular-venous-pressure/' },
  { typed: 'juglar', to: 'protocols/neck/jugular-venous-pressure/' },
  { typed: 'stiff neck', to: 'protocols/neck/meningeal-irritation/' },
  { typed: 'swollen glands', to: 'protocols/neck/neck-nodes/' },
  { typed: 'liver edge', to: 'protocols/abdomen/liver-edge/' },
];

/** Hears every address that the page asks for or stands at, until it is asked what it heard. */
function addressesOf(page: Page): string[] {
  const heard: string[] = [];
  page.on('request', (request) => heard.push(request.url()));
  page.on('framenavigated', (frame) => heard.push(frame.url()));
  return heard;
}

/** What of the words hosts, histories and logs could see: before `#` stands no query but the edition of the index. */
const telling = (addresses: readonly string[], words: string): string[] =>
  addresses.filter((address) => {
    const [before = ''] = decodeURIComponent(address).split('#');
    return before.replace(/\?ts=[0-9a-f]{12}$/, '').includes('?') || before.includes(words);
  });

describe.each(editionNames)('in the site built as %s', (edition) => {
  const results = (page: Page) => page.locator('.results a');

  it.each(journeys)('"$typed" and Enter opens the page, without waiting for an answer', async ({ typed, to }) => {
    await sites.visit(edition, '', {}, async (page) => {
      const addresses = addressesOf(page);
      await page.locator('#look-up-words').focus();
      await page.keyboard.type(typed);
      await page.keyboard.press('Enter');
      await page.waitForURL(`${sites.url(edition)}${to}`);
      expect(await page.locator('h1').count()).toBe(1);
      expect(addresses.length).toBeGreaterThan(3);
      expect(telling(addresses, typed)).toEqual([]);
    });
  });

  it.each(journeys)('"$typed" shows the page among the results, and a click opens it', async ({ typed, to }) => {
    await sites.visit(edition, 'search/', { width: 390 }, async (page) => {
      const addresses = addressesOf(page);
      await page.locator('#look-up-words').focus();
      await page.keyboard.type(typed);
      const link = page.locator(`.results a[href="${editions[edition]}${to}"]`);
      await link.click();
      await page.waitForURL(`${sites.url(edition)}${to}`);
      expect(telling(addresses, typed)).toEqual([]);
    });
  });

  it('"spelen" is put right, and leads on', async () => {
    await sites.visit(edition, '', {}, async (page) => {
      const addresses = addressesOf(page);
      await page.locator('#look-up-words').focus();
      await page.keyboard.type('spelen');
      await page.locator('[role=status] button', { hasText: 'spleen' }).click();
      await page.locator('[role=status]', { hasText: /^\d+ results?\.$/ }).waitFor();
      expect(await page.locator('#look-up-words').inputValue()).toBe('spleen');
      await results(page).first().click();
      await page.waitForURL(`${sites.url(edition)}protocols/abdomen/spleen-tip/`);
      expect(telling(addresses, 'spelen')).toEqual([]);
    });
  });

  it('every filter narrows to pages that have what was chosen, as many as it said', async () => {
    await sites.visit(edition, 'search/', {}, async (page) => {
      const addresses = addressesOf(page);
      const system = page.locator('select[name=system]');
      await system.selectOption('Abdomen');
      const said = page.locator('[role=status]', { hasText: /^\d+ results\.$/ });
      const count = Number.parseInt(await said.innerText());
      for (let shown = await results(page).count(); shown < count; shown = await results(page).count()) {
        await page.locator('.more').click();
        await results(page).nth(shown).waitFor();
      }
      expect(await results(page).count()).toBe(count);
      const places = await page.locator('.results .place').allInnerTexts();
      expect(places.filter((place) => place.startsWith('Abdomen ·')).length).toBeGreaterThan(5);
      expect(places.filter((place) => /Neck|Preparation/.test(place))).toEqual([]);
      await system.locator('option', { hasText: `Abdomen (${count})` }).waitFor({ state: 'attached' });
      expect(telling(addresses, 'Abdomen')).toEqual([]);
    });
  });

  it('Escape clears words and results', async () => {
    await sites.visit(edition, '', {}, async (page) => {
      await page.locator('#look-up-words').focus();
      await page.keyboard.type('spleen');
      await results(page).first().waitFor();
      await page.keyboard.press('Escape');
      await results(page).first().waitFor({ state: 'detached' });
      expect(await page.locator('#look-up-words').inputValue()).toBe('');
      expect(await page.locator('[role=status]').innerText()).toBe('');
    });
  });
});
