import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { budget, overBudget, weighPage } from '../../../src/cli/page-weight.ts';

let root = '';
const write = (path: string, content: string): void => {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), content);
};
const gzip = (text: string): number => gzipSync(text, { level: 9 }).length;

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'weight-'));
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

const css = '@font-face{src:url(/sub/a/one.woff2)}@font-face{src:url("/sub/a/two.woff2")}';
const html =
  '<link rel="stylesheet" href="/sub/a/page.css"><script type="module" src="/sub/a/page.js"></script><script>let a = 1</script>';

function writeSite(): void {
  write('p/index.html', html);
  write('a/page.css', css);
  write('a/one.woff2', 'x'.repeat(100));
  write('a/two.woff2', 'x'.repeat(50));
  write('a/page.js', 'import{b}from"./part.js";const later=()=>import("./later.js")');
  write('a/part.js', 'import"./deep.js";export const b=1');
  write('a/deep.js', 'console.log(1)');
  write('a/later.js', 'never counted');
}

describe('the weight of a page', () => {
  it('counts HTML, CSS and first scripts compressed, and fonts as they are', () => {
    writeSite();
    const scripts = [
      'import{b}from"./part.js";const later=()=>import("./later.js")',
      'import"./deep.js";export const b=1',
      'console.log(1)',
    ];
    expect(weighPage(root, '/sub/', 'p/index.html')).toEqual({
      html: gzip(html),
      css: gzip(css),
      script: [...scripts, 'let a = 1'].reduce((sum, text) => sum + gzip(text), 0),
      fonts: 150,
    });
  });

  it('is the same with and without a slash at the end of the base path', () => {
    writeSite();
    expect(weighPage(root, '/sub', 'p/index.html')).toEqual(weighPage(root, '/sub/', 'p/index.html'));
  });

  it('cannot be taken when a file is missing', () => {
    write('p/index.html', html);
    expect(() => weighPage(root, '/sub/', 'p/index.html')).toThrow(/page\.css/);
  });
});

describe('the budget', () => {
  it('is kept at its very edge', () => {
    expect(overBudget('p', budget)).toEqual([]);
  });

  it('is broken by one byte, and the page, the part and the excess are named', () => {
    expect(overBudget('p/index.html', { ...budget, css: budget.css + 1, fonts: budget.fonts + 20 })).toEqual([
      'p/index.html  css is 6145 bytes, 1 over its 6144.',
      'p/index.html  fonts is 28692 bytes, 20 over its 28672.',
    ]);
  });
});
