import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse, type HTMLElement } from 'node-html-parser';
import { beforeAll, describe, expect, it } from 'vitest';
import { safetyLine } from '../../src/layouts/safety-line.ts';
import { editions, filesBelow, siteFolder, type Edition } from '../site.ts';

interface Page {
  path: string;
  html: string;
  root: HTMLElement;
}

/** The built pages of an edition, parsed once. */
function readPages(folder: string): Page[] {
  return filesBelow(folder)
    .filter((path) => path.endsWith('.html'))
    .map((path) => {
      const html = readFileSync(join(folder, path), 'utf8');
      return { path, html, root: parse(html) };
    });
}

describe.each(Object.keys(editions) as Edition[])('the site built as %s', (edition) => {
  const base = editions[edition];
  let pages: Page[] = [];
  let files = new Set<string>();
  const idsOf = new Map<string, Set<string>>();

  beforeAll(() => {
    const folder = siteFolder(edition);
    pages = readPages(folder);
    files = new Set(filesBelow(folder));
    for (const { path, root } of pages) idsOf.set(path, new Set(root.querySelectorAll('[id]').map((node) => node.id)));
  });

  /** The file that an address leads to, and its fragment; undefined for an address outside the site. */
  function resolve(address: string, from: string): { file: string; fragment: string } | undefined {
    const url = new URL(address, `http://site${base}${from}`);
    if (url.origin !== 'http://site') return undefined;
    const path = decodeURIComponent(url.pathname);
    const inside = path.startsWith(base) ? path.slice(base.length) : `outside the base path: ${path}`;
    return {
      file: inside === '' || inside.endsWith('/') ? `${inside}index.html` : inside,
      fragment: decodeURIComponent(url.hash.slice(1)),
    };
  }

  it('has pages', () => {
    expect(pages.length).toBeGreaterThan(40);
  });

  it('has no link, image, script or style that leads nowhere, and no fragment without its target', () => {
    const broken = pages.flatMap(({ path, root }) =>
      root.querySelectorAll('[href], [src]').flatMap((node) => {
        const address = node.getAttribute('href') ?? node.getAttribute('src') ?? '';
        const target = resolve(address, path.replace(/index\.html$/, ''));
        if (target === undefined) return [];
        if (!files.has(target.file)) return [`${path}: ${address}`];
        const known = idsOf.get(target.file);
        // A request for a run sheet is no place on its page.
        const request = target.file === 'plan/index.html' && target.fragment.includes('=');
        return target.fragment === '' || request || known === undefined || known.has(target.fragment)
          ? []
          : [`${path}: ${address} (no such place)`];
      }),
    );
    expect(broken).toEqual([]);
  });

  it('uses no id twice on a page', () => {
    const twice = pages.flatMap(({ path, root }) => {
      const ids = root.querySelectorAll('[id]').map((node) => node.id);
      return ids.filter((id, index) => ids.indexOf(id) !== index).map((id) => `${path}: ${id}`);
    });
    expect(twice).toEqual([]);
  });

  it('loads nothing from outside', () => {
    const outside = pages.flatMap(({ path, root }) =>
      root
        .querySelectorAll('script[src], link[href], img[src], source[src], iframe, object, embed')
        .filter((node) => node.getAttribute('rel') !== 'canonical')
        .map((node) => node.getAttribute('src') ?? node.getAttribute('href') ?? '')
        .filter((address) => /^(https?:)?\/\//.test(address))
        .map((address) => `${path}: ${address}`),
    );
    expect(outside).toEqual([]);
  });

  it('has one strict policy before every script, and no inline style', () => {
    const faults = pages.flatMap(({ path, html, root }) => {
      const policies = root.querySelectorAll('meta[http-equiv="content-security-policy"]');
      const policy = policies[0]?.getAttribute('content') ?? '';
      const found: string[] = [];
      if (policies.length !== 1) found.push(`${String(policies.length)} policies`);
      if (!policy.includes("default-src 'self'")) found.push('default-src is not self');
      if (/unsafe-inline|'unsafe-eval'|\*/.test(policy)) found.push(`lax: ${policy}`);
      const firstScript = html.search(/<script/i);
      if (firstScript >= 0 && html.search(/<meta http-equiv="content-security-policy"/i) > firstScript)
        found.push('a script before the policy');
      if (root.querySelectorAll('[style], style').length > 0) found.push('an inline style');
      if (/\son[a-z]+="/i.test(html.replace(/<script[\s\S]*?<\/script>/gi, ''))) found.push('an inline handler');
      return found.map((fault) => `${path}: ${fault}`);
    });
    expect(faults).toEqual([]);
  });

  it('says on every page whom it is for and what it is not', () => {
    expect(safetyLine).toMatch(/trained/i);
    const silent = pages.filter(
      ({ root }) => !root.querySelector('body')?.text.replace(/\s+/g, ' ').includes(safetyLine),
    );
    expect(silent.map(({ path }) => path)).toEqual([]);
  });

  it('shows red flags and cautions of a manoeuvre before its technique', () => {
    const manoeuvres = pages.filter(({ path }) => /^protocols\/[^/]+\/[^/]+\/index\.html$/.test(path));
    const wrong = manoeuvres.filter(({ root }) => {
      const titles = root.querySelectorAll('main h2').map((node) => node.text.trim());
      const technique = titles.indexOf('Technique');
      const cautions = titles.indexOf('Cautions');
      return technique < 0 || cautions < 0 || cautions > technique || titles.indexOf('Red flags') > technique;
    });
    expect(manoeuvres.length).toBeGreaterThan(20);
    expect(wrong.map(({ path }) => path)).toEqual([]);
  });

  it('hides no safety behind a tap', () => {
    const hidden = pages.filter(({ root }) =>
      root.querySelectorAll('details').some((node) => /caution|red flag/i.test(node.text)),
    );
    expect(hidden.map(({ path }) => path)).toEqual([]);
  });
});
