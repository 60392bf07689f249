/** Formula and thresholds: W3C, Web Content Accessibility Guidelines 2.2, "relative luminance", "contrast ratio", 1.4.6 and 1.4.11. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const [light = '', dark = ''] = readFileSync('src/styles/tokens.css', 'utf8').split('prefers-color-scheme: dark');

function colours(css: string): Map<string, string> {
  return new Map(
    [...css.matchAll(/--([a-z-]+):\s*(#[0-9a-f]{3,6})\b/g)].map(([, name = '', value = '']) => [name, value]),
  );
}

const themes = { light: colours(light), dark: new Map([...colours(light), ...colours(dark)]) };

function luminance(hex: string): number {
  const long = hex.length === 4 ? hex.replace(/[0-9a-f]/g, '$&$&') : hex;
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const channel = parseInt(long.slice(at, at + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (high + 0.05) / (low + 0.05);
}

const colourOf = (theme: keyof typeof themes, name: string): string => {
  const value = themes[theme].get(name);
  if (value === undefined) throw new Error(`tokens.css has no colour --${name}`);
  return value;
};

describe('contrast (WCAG 2.2)', () => {
  it('is computed as the standard does: black on white is 21, #777 on white 4.48', () => {
    expect(contrast('#000', '#fff')).toBeCloseTo(21, 5);
    expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
  });

  const texts: [string, string][] = [
    ['ink', 'paper'],
    ['ink', 'tint'],
    ['grey', 'paper'],
    ['grey', 'tint'],
    ['alarm', 'paper'],
    ['alarm-paper', 'alarm'],
    ['tab-mark', 'tab'],
  ];
  const cases = (['light', 'dark'] as const).flatMap((theme) =>
    texts.map(([text, ground]) => ({ theme, text, ground })),
  );

  it.each(cases)('of --$text on --$ground is at least 7 in the $theme theme', ({ theme, text, ground }) => {
    expect(contrast(colourOf(theme, text), colourOf(theme, ground))).toBeGreaterThanOrEqual(7);
  });

  it('keeps the dark theme dim: no ground is lighter than a tenth of white, no text brighter than half', () => {
    for (const ground of ['paper', 'tint', 'tab']) expect(luminance(colourOf('dark', ground))).toBeLessThan(0.1);
    for (const text of ['ink', 'grey', 'alarm']) expect(luminance(colourOf('dark', text))).toBeLessThan(0.5);
  });
});
