/** What must hold on every page that is built, in a real browser, at both editions. */
import { describe, expect, it } from 'vitest';
import { builtPages, oneOfEachKind } from './kinds.ts';
import { editionNames, openSites } from './open-sites.ts';

const sites = openSites();

/** Pages that one window goes through. */
const together = 30;

describe.each(editionNames)('every page built as %s', (edition) => {
  // Every page below a path, where a wrong address shows; at the root, one of each kind.
  const pages = (edition === 'sub' ? builtPages(edition) : oneOfEachKind(edition)).map(({ path }) => path);
  const tours = Array.from({ length: Math.ceil(pages.length / together) }, (_, i) =>
    pages.slice(i * together, (i + 1) * together),
  );

  it.each(tours.map((paths) => ({ paths, first: paths[0], count: paths.length })))(
    'opens without an error, a breach of its policy or a request to elsewhere: $count from /$first on',
    async ({ paths }) => {
      const titles: string[] = [];
      const amiss = await sites.tour(edition, paths, async (page) => {
        titles.push(await page.locator('main h1').innerText());
      });
      expect(amiss).toEqual([]);
      expect(titles).toHaveLength(paths.length);
      expect(titles).not.toContain('');
    },
  );
});

describe('the kinds of page', () => {
  it('are named on every page', () => {
    const unnamed = builtPages('root').filter(({ kind }) => kind === 'none');
    expect(unnamed.map(({ path }) => path)).toEqual([]);
    expect(oneOfEachKind('root').length).toBeGreaterThan(15);
  });
});

describe('the watch over pages', () => {
  it.each([
    ['an error', 'setTimeout(() => { throw new Error("broken"); })', /broken/],
    ['a console error', 'console.error("wrong")', /wrong/],
    ['a request to elsewhere', 'fetch("https://elsewhere.example/").catch(() => 0)', /elsewhere/],
    ['a request above the base path', 'fetch("/").catch(() => 0)', /outside/],
    ['a missing file', 'fetch("missing.json")', /404/],
    ['an inline style', 'document.body.setAttribute("style", "color: red")', /policy: style-src-attr/],
  ])('notices %s', async (_what, script, words) => {
    const visited = sites.visit('sub', '', {}, async (page) => {
      await page.evaluate(`{ ${script} }`);
      await page.waitForTimeout(500);
    });
    await expect(visited).rejects.toThrow(words);
  });

  it('tells of a tour which page it was', async () => {
    const paths = ['guides/safety/', 'sources/'];
    const amiss = await sites.tour('sub', paths, async (page) => {
      if (page.url().endsWith('sources/')) await page.evaluate('{ console.error("wrong") }');
    });
    expect(amiss).toEqual(['/sources/: console: wrong']);
  });
});
