/**
 * Everything by keyboard alone. Demands: W3C, Web Content Accessibility Guidelines 2.2, 2.1.1 (keyboard), 2.1.2 (no
 * trap), 2.4.1 (a way past the head), 2.4.3 (order), 2.4.7 and 2.4.11 (focus seen, and not hidden).
 */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { oneOfEachKind } from './kinds.ts';
import { editionNames, openSites } from './open-sites.ts';

const sites = openSites();

/** Where the focus is, and how it shows. */
interface Focus {
  /** Place among everything that can be reached, in the order of the document; -1 outside the page. */
  place: number;
  words: string;
  /** Pixels of the outline; of a link that stretches over its entry, of the entry. */
  outline: number;
  /** Whether some part of it stands in the window, uncovered. */
  seen: boolean;
}

/** Tab stops once in a group of radio buttons, arrows do the rest: its first button stands for all of them. */
const stopOf = `((node) => node.type === 'radio'
  ? document.querySelector('input[type=radio][name="' + node.name + '"]') : node)`;

/** What Tab can reach: shown links, buttons and fields. */
const reachable = `[...document.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex="0"]')]
  .filter((node) => !node.disabled && ${stopOf}(node) === node && node.checkVisibility({ visibilityProperty: true }))`;

const focus = `(() => {
  const node = document.activeElement;
  const widthOf = (style) => style.outlineStyle === 'none' ? 0 : parseFloat(style.outlineWidth);
  const boxes = [...node.getClientRects()];
  // The middle of the part that stands in the window: a table may be taller than it.
  const uncovered = ({ left, right, top, bottom }) => {
    const middle = (from, to, most) => (Math.max(from, 0) + Math.min(to, most)) / 2;
    const at = document.elementFromPoint(middle(left, right, innerWidth), middle(top, bottom, innerHeight));
    return at !== null && (node === at || node.contains(at) || at.contains(node));
  };
  return {
    place: ${reachable}.indexOf(${stopOf}(node)),
    words: (node.innerText ?? node.name ?? '').trim(),
    outline: Math.max(widthOf(getComputedStyle(node)), widthOf(getComputedStyle(node, '::after'))),
    seen: boxes.some(uncovered),
  };
})()`;

const focusOf = (page: Page): Promise<Focus> => page.evaluate<Focus>(focus);

/** An index of thousands of links is walked so far from either end: each stop takes the browser time. */
const mostStops = 80;

/** Presses a key until the focus leaves the page or comes where it was before, or far enough; gives each place it was at. */
async function walk(page: Page, key: string): Promise<Focus[]> {
  const walked: Focus[] = [];
  for (;;) {
    if (walked.length === mostStops) return walked;
    await page.keyboard.press(key);
    const at = await focusOf(page);
    if (at.place < 0 || walked.some(({ place }) => place === at.place)) return walked;
    walked.push(at);
  }
}

/** Presses Tab until the focus is on an element with these words. Throws when it comes round without. */
async function tabTo(page: Page, words: string | RegExp): Promise<void> {
  const passed: string[] = [];
  for (let presses = 0; presses < 200; presses += 1) {
    await page.keyboard.press('Tab');
    const at = await focusOf(page);
    if (typeof words === 'string' ? at.words === words : words.test(at.words)) return;
    passed.push(at.words);
  }
  throw new Error(`Tab does not reach "${String(words)}", but ${passed.join(', ')}.`);
}

describe.each(oneOfEachKind('sub'))('a page of kind "$kind" (/$path)', ({ path }) => {
  const walkFresh = (key: string): Promise<[number[], Focus[]]> =>
    sites.visit('sub', path, {}, async (page) => {
      const everything = await page.evaluate<number>(`${reachable}.length`);
      return [Array.from({ length: everything }, (_, place) => place), await walk(page, key)];
    });

  it('lets Tab reach everything once, in the order of the page, seen and outlined, and out again', async () => {
    const [order, walked] = await walkFresh('Tab');
    expect(walked.map(({ place }) => place)).toEqual(order.slice(0, mostStops));
    expect(walked[0]?.words).toBe('Skip to the text');
    expect(walked.filter(({ outline }) => outline < 2)).toEqual([]);
    expect(walked.filter(({ seen }) => !seen)).toEqual([]);
  });

  it('lets Shift and Tab reach everything once from the end, in the other order', async () => {
    const [order, walked] = await walkFresh('Shift+Tab');
    expect(walked.map(({ place }) => place)).toEqual(order.toReversed().slice(0, mostStops));
    expect(walked.filter(({ outline }) => outline < 2)).toEqual([]);
  });
});

describe.each(editionNames)('with the keyboard alone, in the site built as %s,', (edition) => {
  it('the way past the head comes first, and leads to the text', async () => {
    await sites.visit(edition, '', {}, async (page) => {
      await page.keyboard.press('Tab');
      expect((await focusOf(page)).words).toBe('Skip to the text');
      await page.keyboard.press('Enter');
      await page.waitForURL(/#text$/);
      await page.keyboard.press('Tab');
      expect(await page.evaluate('document.activeElement.closest("main") !== null')).toBe(true);
    });
  });

  it('look-up is reached, answers, and its first result opens', async () => {
    await sites.visit(edition, '', {}, async (page) => {
      await page.keyboard.press('Tab');
      await page.keyboard.press('Enter');
      await page.keyboard.press('Tab');
      expect(await page.evaluate('document.activeElement.id')).toBe('look-up-words');
      await page.keyboard.type('jvp');
      await page.locator('.results a').first().waitFor();
      await tabTo(page, 'Measure the jugular venous pressure');
      await page.keyboard.press('Enter');
      await page.waitForURL(/\/protocols\/neck\/jugular-venous-pressure\/$/);
      expect(await page.locator('h1').innerText()).toBe('Measure the jugular venous pressure');
    });
  });

  it('a manoeuvre is reached through the systems', async () => {
    await sites.visit(edition, '', {}, async (page) => {
      await tabTo(page, 'Abdomen');
      await page.keyboard.press('Enter');
      await page.waitForURL(/\/protocols\/abdomen\/$/);
      await tabTo(page, /^Feel for the liver edge/);
      await page.keyboard.press('Enter');
      await page.waitForURL(/\/protocols\/abdomen\/liver-edge\/$/);
      await tabTo(page, 'Abdomen');
    });
  });

  it('a choice is made, cleared, and put into the address', async () => {
    await sites.visit(edition, 'search/', {}, async (page) => {
      await page.locator('look-up select[name=system]').focus();
      await page.keyboard.type('Neck');
      await page.locator('.results a').first().waitFor();
      await tabTo(page, 'Put this look-up into the address');
      await page.keyboard.press('Enter');
      await page.waitForURL(/#q=&system=Neck$/);
      await page.keyboard.press('Shift+Tab');
      expect((await focusOf(page)).words).toBe('Clear');
      await page.keyboard.press('Enter');
      await page.waitForURL(/\/search\/$/);
      expect(await page.evaluate('document.activeElement.id')).toBe('look-up-words');
    });
  });
});
