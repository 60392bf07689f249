/**
 * What a phone needs of one page of each kind. Thresholds: W3C, Web Content Accessibility Guidelines 2.2, 1.4.10 (no
 * scrolling sideways at 320 px) and 2.5.5 (targets of 44 px; links within a sentence are exempt).
 */
import { describe, expect, it } from 'vitest';
import { oneOfEachKind } from './kinds.ts';
import { openSites } from './open-sites.ts';

const sites = openSites();
const kinds = oneOfEachKind('sub');

/** What stands out to the right of the window, save in a frame of its own that scrolls. */
const standingOut = `[...document.querySelectorAll('body *')]
  .filter((node) => node.closest('.out-of-sight, .table-frame') === null)
  .filter((node) => node.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5)
  .map((node) => node.outerHTML.slice(0, 120))`;

/** Where a tap counts: the label around a field is part of it, and so is the whole entry that a link stretches over. */
const tapped = `(node) => {
  const label = node.closest('label');
  return (label !== null && label.control === node ? label : node).getBoundingClientRect();
}`;

/** Links, buttons and fields that are shown, stand by themselves and are lower or narrower than 44 px. */
const smallTargets = `[...document.querySelectorAll('a, button, input, select, textarea, summary')]
  .filter((node) => !node.matches('.skip') && getComputedStyle(node).display !== 'inline')
  .map((node) => ({ node, box: (${tapped})(node) }))
  .filter(({ box }) => box.width > 0 && (box.height < 43.9 || box.width < 43.9))
  .map(({ node, box }) => box.width + ' × ' + box.height + ': ' + node.outerHTML.slice(0, 160))`;

/** Links that run in a line of text but have no other text in it: they are no part of a sentence. */
const loneLinks = `[...document.querySelectorAll('nav a, li > a:only-child')]
  .filter((node) => getComputedStyle(node).display === 'inline' && node.getBoundingClientRect().width > 0)
  .filter((node) => node.closest('nav') !== null || node.parentElement.textContent.trim() === node.textContent.trim())
  .filter((node) => node.getBoundingClientRect().height < 43.9)
  .map((node) => node.outerHTML.slice(0, 160))`;

/** What holds text itself and is shown. */
const withText = `[...document.querySelectorAll('body *')]
  .filter((node) => [...node.childNodes].some((child) => child.nodeType === 3 && child.data.trim() !== ''))
  .filter((node) => node.getBoundingClientRect().height > 1 && node.closest('noscript') === null)`;

/** An element and the size of its text in pixels. */
interface Sized {
  size: number;
  html: string;
}

const sizes = `.map((node) => ({
  size: parseFloat(getComputedStyle(node).fontSize),
  html: node.outerHTML.slice(0, 120),
}))`;

/** Running text: headings, paragraphs and items; notes, labels and edition lines in the small size aside. */
const runningText = `${withText}
  .filter((node) => node.matches('main :is(p, li, dd, h1)'))
  .filter((node) => node.closest('.note, .small, .small-part, .place, .above, .which, .edition, .opened') === null)`;

describe.each(kinds)('on a phone, a page of kind "$kind" (/$path)', ({ path }) => {
  it('does not scroll sideways from 320 px on, nor cuts anything off', async () => {
    await sites.visit('sub', path, {}, async (page) => {
      for (const width of [320, 390, 700, 960, 1280]) {
        await page.setViewportSize({ width, height: 844 });
        expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(width);
        expect(await page.evaluate(standingOut), `${width} px`).toEqual([]);
      }
    });
  });

  it('has targets of 44 px', async () => {
    const small = await sites.visit('sub', path, { width: 390 }, async (page) => [
      ...(await page.evaluate<string[]>(smallTargets)),
      ...(await page.evaluate<string[]>(loneLinks)),
    ]);
    expect(small).toEqual([]);
  });

  it('has running text of 17 px or more, and nothing below 14', async () => {
    const [running, all] = await sites.visit('sub', path, { width: 390 }, async (page) => [
      await page.evaluate<Sized[]>(runningText + sizes),
      await page.evaluate<Sized[]>(withText + sizes),
    ]);
    expect(running.length).toBeGreaterThan(0);
    expect(running.filter(({ size }) => size < 17)).toEqual([]);
    expect(all.filter(({ size }) => size < 14)).toEqual([]);
  });
});
