import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { indexFiles } from '../../../src/search/index-files.ts';
import { recordHtml, smallWords } from '../../../src/search/record-html.ts';
import { searchRecords } from '../../../src/search/records.ts';
import { fixtureLibrary } from '../../fixtures/library.ts';
import { openIndexFiles, type OpenIndex } from '../../search-index.ts';

const records = searchRecords(fixtureLibrary);
const bend = records.findIndex(({ url }) => url.endsWith('/wrist-bend/'));
let files: Awaited<ReturnType<typeof indexFiles>>;
let open: OpenIndex;

beforeAll(async () => {
  files = await indexFiles(records);
  open = await openIndexFiles(files);
});

afterAll(() => open.close());

describe('the HTML of a record', () => {
  it('cannot be broken by what the content holds', () => {
    const [first] = records;
    if (first === undefined) throw new Error('The fixture has no record.');
    const html = recordHtml({ ...first, title: '<b>"&', passages: [{ text: '</main><p>', weight: 1 }] }, 0);
    expect(html).toContain('&lt;b&gt;&quot;&amp;');
    expect(html.match(/<\/main>/g)).toHaveLength(1);
  });

  it('keeps names out of what may be quoted', () => {
    const record = records[bend];
    if (record === undefined) throw new Error('The fixture has no wrist-bend.');
    const quotable = recordHtml(record, 0).replaceAll(/<p data-pagefind-ignore.*?<\/p>/g, '');
    expect(quotable).not.toContain('range of motion');
    expect(quotable).toContain('How far does each wrist bend');
  });
});

describe('files of the search index', () => {
  it('are the same bytes for the same records', async () => {
    const again = await indexFiles(records);
    expect([...again.keys()]).toEqual([...files.keys()]);
    expect(
      [...again].filter(([path, bytes]) => !Buffer.from(bytes).equals(files.get(path) ?? Buffer.alloc(0))),
    ).toEqual([]);
  });

  it('are what a page needs, with no interface of another make', () => {
    const names = [...files.keys()].map((path) => path.replaceAll(/[0-9a-f]{7,}/g, '#'));
    expect(new Set(names)).toEqual(
      new Set([
        'filter/en_#.pf_filter',
        'fragment/en_#.pf_fragment',
        'index/en_#.pf_index',
        'pagefind-entry.json',
        'pagefind-worker.js',
        'pagefind.en_#.pf_meta',
        'pagefind.js',
        'wasm.en.pagefind',
      ]),
    );
  });

  it('hold a part for each record', () => {
    expect([...files.keys()].filter((path) => path.startsWith('fragment/'))).toHaveLength(records.length);
  });

  it('answer another program with title, position, flags and filters in words', async () => {
    const { results } = await open.index.search('inspection', { filters: {} });
    const page = await results[0]?.data();
    expect(page?.meta).toMatchObject({
      title: 'Look at the wrists',
      kind: 'Manoeuvre',
      system: 'Wrist',
      position: 'Sitting',
      flags: '1 now, 1 today',
    });
    expect(page).toMatchObject({ filters: { position: ['Sitting', 'Lying on the back'] } });
  });

  it('find nothing by the small words alone that they would not find without', async () => {
    const { results } = await open.index.search(`${smallWords.slice(0, 5).join(' ')} goniometer`, { filters: {} });
    expect(results).toHaveLength(1);
  });

  it('refuse to be made of a record that cannot be read', async () => {
    const [first] = records;
    if (first === undefined) throw new Error('The fixture has no record.');
    await expect(indexFiles([{ ...first, url: undefined as unknown as string }])).rejects.toThrow(/refuses|index/i);
  });
});
