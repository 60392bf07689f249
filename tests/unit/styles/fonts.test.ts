import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { budget } from '../../../src/cli/page-weight.ts';
import { siteFonts, subset } from '../../../src/cli/site-fonts.ts';
import { requireLibrary } from '../../../src/library/load.ts';

const folder = 'src/styles/fonts';

describe('fonts of the site', () => {
  it.each(siteFonts)('hold in $file what `npm run fonts` writes', async (font) => {
    expect(readFileSync(`${folder}/${font.file}`).equals(await subset(font))).toBe(true);
  });

  it('are these and no others', () => {
    expect(readdirSync(folder).sort()).toEqual(siteFonts.map(({ file }) => file).sort());
    const css = readFileSync('src/styles/fonts.css', 'utf8');
    for (const { file } of siteFonts) expect(css).toContain(`./fonts/${file}`);
  });

  it('stay within the budget of a page', () => {
    const bytes = siteFonts.reduce((sum, { file }) => sum + readFileSync(`${folder}/${file}`).length, 0);
    expect(bytes).toBeLessThanOrEqual(budget.fonts);
  });

  it('cover every character of the library, the spaces aside', () => {
    const drawn = new Set(siteFonts[0]?.characters);
    const used = new Set(
      JSON.stringify(requireLibrary('content'))
        .replace(/\\[nt"]/g, '')
        .normalize('NFC'),
    );
    expect([...used].filter((character) => !drawn.has(character) && !/\s/u.test(character))).toEqual([]);
  });
});
