/**
 * Accessibility of one page of each kind, light and dark, on a phone and on a desk. Rules: axe-core, those of W3C's Web
 * Content Accessibility Guidelines 2.0, 2.1 and 2.2 at A and AA, the best practices, and 1.4.6 (contrast 7:1) of AAA.
 */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { oneOfEachKind } from './kinds.ts';
import { editionNames, openSites } from './open-sites.ts';

const sites = openSites();

const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
const rules = { 'color-contrast-enhanced': { enabled: true }, 'target-size': { enabled: true } };

/** Faults of the page as it stands: rule, and the elements that break it. */
async function faults(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page })
    .setLegacyMode() // Pages have no frames: no second page need be opened to gather them.
    .options({ runOnly: { type: 'tag', values: tags }, rules })
    .analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}

/** Both editions have the same pages: each look is met in one of them. */
const looks = {
  root: [
    { width: 390, colorScheme: 'light' },
    { width: 1280, colorScheme: 'dark' },
  ],
  sub: [
    { width: 1280, colorScheme: 'light' },
    { width: 390, colorScheme: 'dark' },
  ],
} as const;

/** Bytes above which a page is seen in two looks instead of four: it takes the checker a minute. */
const bulky = 300_000;

describe.each(editionNames)('accessibility, in the site built as %s,', (edition) => {
  const pages = oneOfEachKind(edition).filter(({ html }) => edition === 'sub' || html.length < bulky);

  it.each(pages)('holds on a page of kind "$kind": /$path', async ({ path }) => {
    await sites.visit(edition, path, {}, async (page) => {
      for (const { width, colorScheme } of looks[edition]) {
        await page.setViewportSize({ width, height: 844 });
        await page.emulateMedia({ colorScheme });
        expect(await faults(page), `${width} px, ${colorScheme}`).toEqual([]);
      }
    });
  });
});

describe('accessibility', () => {
  it.each([
    [
      'a picture without words',
      'document.querySelector("main").insertAdjacentHTML("beforeend", "<img src=\'/favicon.svg\'>")',
    ],
    ['grey text of 4.6:1', 'document.querySelector(".title p").style.setProperty("color", "#757575")'],
  ])('would be found wanting for %s', async (_what, spoil) => {
    const found = await sites.visit('root', '', {}, async (page) => {
      await page.evaluate(spoil);
      return faults(page);
    });
    expect(found).not.toEqual([]);
  });
});
