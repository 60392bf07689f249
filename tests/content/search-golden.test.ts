import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { requireLibrary } from '../../src/library/load.ts';
import { didYouMean } from '../../src/search/did-you-mean.ts';
import { indexFiles } from '../../src/search/index-files.ts';
import { lookUp } from '../../src/search/look-up.ts';
import { searchRecords } from '../../src/search/records.ts';
import type { Hit } from '../../src/search/search-index.ts';
import { searchTerms } from '../../src/search/terms.ts';
import { openIndexFiles, type OpenIndex } from '../search-index.ts';
import { lookUps, slips } from './look-ups.ts';

/** Share of look-ups that must have a right page first. Every one must have it among the first three. */
const firstFloor = 0.95;

const records = searchRecords(requireLibrary('content'));
const terms = searchTerms(records);
let open: OpenIndex;

beforeAll(async () => {
  open = await openIndexFiles(await indexFiles(records));
});

afterAll(() => open.close());

type Find = (typed: string) => Promise<readonly Hit[]>;

/** With the look-up of the pages, which puts words right. */
const asUsersDo: Find = async (typed) =>
  (await lookUp(typed, { index: open.index, correct: (words) => Promise.resolve(didYouMean(words, terms)) })).hits;

/** With the index's own script and its own ranking, as another program would. */
const byDefault: Find = async (typed) => (await open.index.search(typed, { filters: {} })).results;

interface Ranked {
  typed: string;
  wanted: string;
  /** From 1; Infinity when it is not found. */
  rank: number;
  first: string;
}

async function rankOf([typed, ...pages]: readonly string[], find: Find): Promise<Ranked> {
  const hits = await find(typed ?? '');
  const paths = await Promise.all(hits.map(async (hit) => new URL((await hit.data()).url).pathname));
  const place = paths.findIndex((path) => pages.some((page) => path.endsWith(`/${page}/`)));
  return {
    typed: typed ?? '',
    wanted: pages.join(' or '),
    rank: place < 0 ? Infinity : place + 1,
    first: paths[0] ?? 'nothing',
  };
}

async function rank(table: readonly (readonly string[])[], find: Find): Promise<Ranked[]> {
  const ranked: Ranked[] = [];
  for (const row of table) ranked.push(await rankOf(row, find));
  return ranked;
}

function report(name: string, ranked: readonly Ranked[]): { first: number; late: Ranked[] } {
  const misses = ranked.filter(({ rank: place }) => place > 1);
  const first = 1 - misses.length / ranked.length;
  const lines = misses.map((miss) => `  "${miss.typed}": ${miss.wanted} at ${miss.rank}, first ${miss.first}`);
  process.stdout.write([`${name}: ${(100 * first).toFixed(1)} % of ${ranked.length} first`, ...lines, ''].join('\n'));
  return { first, late: ranked.filter(({ rank: place }) => place > 3) };
}

describe('look-up', () => {
  test('is measured on at least 45 look-ups, no two alike', () => {
    const typed = [...lookUps, ...slips].map(([words]) => words.toLowerCase());
    expect(new Set(typed).size).toBe(typed.length);
    expect(typed.length).toBeGreaterThanOrEqual(45);
  });

  test('asks for pages that exist', () => {
    const wanted = [...lookUps, ...slips].flatMap(([, ...pages]) => pages);
    expect(wanted.filter((page) => !records.some(({ url }) => url.endsWith(`/${page}/`)))).toEqual([]);
  });

  test.each([
    ['names and slips, as the pages look them up', [...lookUps, ...slips], asUsersDo],
    ["names, with the index's own ranking", lookUps, byDefault],
  ] as const)('puts the right page first: %s', async (name, table, find) => {
    const { first, late } = report(name, await rank(table, find));
    expect(late).toEqual([]);
    expect(first).toBeGreaterThanOrEqual(firstFloor);
  });

  test('puts a slip right in words of the library', async () => {
    const answers = await Promise.all(
      slips.map(([typed]) =>
        lookUp(typed, { index: open.index, correct: (words) => Promise.resolve(didYouMean(words, terms)) }),
      ),
    );
    expect(answers.filter(({ meant }) => meant === undefined)).toEqual([]);
    const known = new Set(terms);
    expect(answers.flatMap(({ meant = '' }) => meant.split(' ')).filter((word) => !known.has(word))).toEqual([]);
  });
});
