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

/**
 * Sizes of running text: paragraphs and list items that hold text themselves; notes, labels and edition lines in the
 * small size aside.
 */
const runningText = `[...document.querySelectorAll('main p, main li, main dd, main h1')]
  .filter((node) => [...node.childNodes].some((child) => child.nodeType === 3 && child.data.trim() !== ''))
  .filter((node) => node.getBoundingClientRect().height > 1)
  .filter((node) => node.closest('.note, .small, .small-part, .place, .above, .which, .edition, .opened') === null)
  .map((node) => ({ size: parseFloat(getComputedStyle(node).fontSize), html: node.outerHTML.slice(0, 120) }))`;

describe.each(kinds)('on a phone, a page of kind "$kind" (/$path)', ({ path }) => {
  it('does not scroll sideways at 320 px, nor cuts anything off', async () => {
    const [wide, out] = await sites.visit('sub', path, { width: 320 }, async (page) => [
      await page.evaluate<number>('document.documentElement.scrollWidth'),
      await page.evaluate<string[]>(standingOut),
    ]);
    expect(wide).toBeLessThanOrEqual(320);
    expect(out).toEqual([]);
  });

  it('has targets of 44 px', async () => {
    const small = await sites.visit('sub', path, { width: 390 }, async (page) => [
      ...(await page.evaluate<string[]>(smallTargets)),
      ...(await page.evaluate<string[]>(loneLinks)),
    ]);
    expect(small).toEqual([]);
  });

  it('has running text of 17 px or more', async () => {
    const texts = await sites.visit('sub', path, { width: 390 }, (page) =>
      page.evaluate<{ size: number; html: string }[]>(runningText),
    );
    expect(texts.length).toBeGreaterThan(0);
    expect(texts.filter(({ size }) => size < 17)).toEqual([]);
  });
});
