import { readFileSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { gzipSync } from 'node:zlib';

/** What a page costs a first visitor, in bytes: text compressed with gzip at level 9, fonts as they are. */
export interface PageWeight {
  html: number;
  css: number;
  /** Scripts that load with the page and what they import; not what is imported later, such as the search index. */
  script: number;
  fonts: number;
}

/** Most that a manoeuvre's page may weigh, in bytes. */
export const budget: PageWeight = { html: 8 * 1024, css: 6 * 1024, script: 3 * 1024, fonts: 28 * 1024 };

/** The same in a clinic's edition, where each page says whose it is, whom to call and what is the clinic's own. */
export const editionBudget: PageWeight = { ...budget, html: budget.html + 1024 };

/**
 * Weighs a built page. `file` is its HTML below `root`, the folder that is served at `base` (`/` or `/sub/`).
 * Throws when a file that the page names is not there.
 */
export function weighPage(root: string, base: string, file: string): PageWeight {
  const html = readFileSync(join(root, file), 'utf8');
  const styles = attributeValues(html, /<link rel="stylesheet" href="([^"]+)"/g);
  const scripts = attributeValues(html, /<script[^>]* src="([^"]+)"/g);
  const inline = attributeValues(html, /<script(?![^>]* src=)(?![^>]*json)[^>]*>([^<]+)</g);
  const below = base.replace(/\/*$/, '/');
  const onDisk = (address: string) => join(root, address.slice(below.length));
  const css = styles.map((address) => readFileSync(onDisk(address), 'utf8'));
  const fonts = new Set(css.flatMap((text) => attributeValues(text, /url\("?([^")]+\.woff2)"?\)/g)));
  return {
    html: compressed(html),
    css: sum(css.map(compressed)),
    script: sum(
      [...withImports(scripts.map(onDisk)).map((path) => readFileSync(path, 'utf8')), ...inline].map(compressed),
    ),
    fonts: sum([...fonts].map((address) => readFileSync(onDisk(address)).length)),
  };
}

/** Returns a line for each part of a page that is over budget: page, part, bytes and excess. */
export function overBudget(page: string, weight: PageWeight, most = budget): string[] {
  const parts = Object.keys(most) as (keyof PageWeight)[];
  return parts
    .filter((part) => weight[part] > most[part])
    .map((part) => `${page}  ${part} is ${weight[part]} bytes, ${weight[part] - most[part]} over its ${most[part]}.`);
}

function withImports(scripts: string[]): string[] {
  const found = [...scripts];
  for (const path of found) {
    const imports = attributeValues(readFileSync(path, 'utf8'), /(?:from|import)\s*["'](\.[^"']+)["']/g);
    found.push(...imports.map((name) => posix.join(dirname(path), name)).filter((name) => !found.includes(name)));
  }
  return found;
}

function attributeValues(text: string, pattern: RegExp): string[] {
  return [...text.matchAll(pattern)].flatMap((match) => (match[1] === undefined ? [] : [match[1]]));
}

const compressed = (text: string): number => gzipSync(text, { level: 9 }).length;
const sum = (numbers: number[]): number => numbers.reduce((total, one) => total + one, 0);
