/** What must hold on every page that is built, in a real browser, at both editions. */
import { describe, expect, it } from 'vitest';
import { builtPages, oneOfEachKind } from './kinds.ts';
import { editionNames, openSites } from './open-sites.ts';

const sites = openSites();

describe.each(editionNames)('every page built as %s', (edition) => {
  // `visit` fails where something goes wrong; the page itself must have come.
  // Every page below a path, where a wrong address shows; at the root, one of each kind.
  const pages = edition === 'sub' ? builtPages(edition) : oneOfEachKind(edition);
  it.each(pages.map(({ path }) => path))(
    'opens without an error, a breach of its policy or a request to elsewhere: /%s',
    async (path) => {
      const title = await sites.visit(edition, path, {}, (page) => page.locator('main h1').innerText());
      expect(title).not.toBe('');
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
});
