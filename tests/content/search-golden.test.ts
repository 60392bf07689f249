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

/** Shares of look-ups with a right page first, and among the first three: as measured, rounded down to a hundredth. */
const floors = { first: 0.96, firstThree: 0.99 };

const library = requireLibrary('content');
const records = searchRecords(library);
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

interface Shares {
  first: number;
  firstThree: number;
}

function shareWithin(places: number, ranked: readonly Ranked[]): number {
  return ranked.filter(({ rank: place }) => place <= places).length / ranked.length;
}

function report(name: string, ranked: readonly Ranked[]): Shares {
  const shares = { first: shareWithin(1, ranked), firstThree: shareWithin(3, ranked) };
  const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
  const lines = ranked
    .filter(({ rank: place }) => place > 1)
    .map((miss) => `  "${miss.typed}": ${miss.wanted} at ${miss.rank}, first ${miss.first}`);
  const sum = `${percent(shares.first)} first, ${percent(shares.firstThree)} among the first three, of ${ranked.length}`;
  process.stdout.write([`${name}: ${sum}`, ...lines, ''].join('\n'));
  return shares;
}

describe('look-up', () => {
  test('is measured on at least 200 look-ups, no two alike', () => {
    const typed = [...lookUps, ...slips].map(([words]) => words.toLowerCase());
    expect(new Set(typed).size).toBe(typed.length);
    expect(typed.length).toBeGreaterThanOrEqual(200);
  });

  test.each(library.protocols.map(({ id }) => id))('is measured on at least four look-ups of %s', (system) => {
    const wanted = [...lookUps, ...slips].map(([, page = '']) => records.find(({ url }) => url.endsWith(`/${page}/`)));
    const here = wanted.filter((record) => record?.url.startsWith(`/protocols/${system}/`));
    expect(here.length).toBeGreaterThanOrEqual(4);
  });

  test('asks for pages that exist', () => {
    const wanted = [...lookUps, ...slips].flatMap(([, ...pages]) => pages);
    expect(wanted.filter((page) => !records.some(({ url }) => url.endsWith(`/${page}/`)))).toEqual([]);
  });

  test.each([
    ['names and slips, as the pages look them up', [...lookUps, ...slips], asUsersDo],
    ["names, with the index's own ranking", lookUps, byDefault],
  ] as const)('puts the right page first: %s', async (name, table, find) => {
    const { first, firstThree } = report(name, await rank(table, find));
    expect(first).toBeGreaterThanOrEqual(floors.first);
    expect(firstThree).toBeGreaterThanOrEqual(floors.firstThree);
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
