/** In the dark: what the screen shows, as pixels, keeps a dark-adapted eye; and paper knows nothing of it. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { oneOfEachKind } from './kinds.ts';
import { openSites } from './open-sites.ts';

const sites = openSites();

/**
 * Mean relative luminance of a picture (0 black, 1 white; W3C, Web Content Accessibility Guidelines 2.2, definition of
 * relative luminance), and the share of its pixels that are lighter than mid-grey.
 */
async function lightOf(page: Page, png: Buffer): Promise<{ mean: number; bright: number }> {
  return page.evaluate<{ mean: number; bright: number }>(`(async () => {
    const picture = new Image();
    picture.src = 'data:image/png;base64,${png.toString('base64')}';
    await picture.decode();
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [picture.width, picture.height];
    const drawing = canvas.getContext('2d');
    drawing.drawImage(picture, 0, 0);
    const { data } = drawing.getImageData(0, 0, canvas.width, canvas.height);
    const linear = (byte) => byte / 255 <= 0.04045 ? byte / 255 / 12.92 : ((byte / 255 + 0.055) / 1.055) ** 2.4;
    let [sum, bright] = [0, 0];
    for (let i = 0; i < data.length; i += 4) {
      const light = 0.2126 * linear(data[i]) + 0.7152 * linear(data[i + 1]) + 0.0722 * linear(data[i + 2]);
      sum += light;
      bright += light > 0.2 ? 1 : 0;
    }
    return { mean: sum / (data.length / 4), bright: bright / (data.length / 4) };
  })()`);
}

/** Colours of everything, as lines to compare. */
const colours = `[...document.querySelectorAll('html, body, body *')].map((node) => {
  const { color, backgroundColor, borderTopColor } = getComputedStyle(node);
  return node.tagName + ' ' + [color, backgroundColor, borderTopColor].join(' ');
})`;

describe.each(oneOfEachKind('root'))('a page of kind "$kind" (/$path)', ({ path }) => {
  it.each([390, 1280])('is dim in the dark at %d px: no large light area', async (width) => {
    const light = await sites.visit('root', path, { width, dark: true }, async (page) =>
      lightOf(page, await page.screenshot()),
    );
    expect(light.mean).toBeLessThan(0.06);
    expect(light.bright).toBeLessThan(0.12);
  });

  it('prints alike, whether the screen is light or dark: dark ink on white', async () => {
    await sites.visit('root', path, {}, async (page) => {
      await page.emulateMedia({ media: 'print', colorScheme: 'light' });
      const byDay = await page.evaluate<string[]>(colours);
      await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
      expect(await page.evaluate<string[]>(colours)).toEqual(byDay);
      expect(byDay.find((line) => line.startsWith('BODY'))).toContain('rgb(17, 17, 17) rgb(255, 255, 255)');
    });
  });
});

describe('the measure of light', () => {
  it('finds a page by day light', async () => {
    const light = await sites.visit('root', '', {}, async (page) => lightOf(page, await page.screenshot()));
    expect(light.mean).toBeGreaterThan(0.7);
    expect(light.bright).toBeGreaterThan(0.7);
  });
});
