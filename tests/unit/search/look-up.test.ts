import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { didYouMean } from '../../../src/search/did-you-mean.ts';
import { indexFiles } from '../../../src/search/index-files.ts';
import { countsOf, lookUp, type Answer, type Ground } from '../../../src/search/look-up.ts';
import { searchRecords } from '../../../src/search/records.ts';
import { searchTerms } from '../../../src/search/terms.ts';
import { fixtureLibrary } from '../../fixtures/library.ts';
import { openIndexFiles, type OpenIndex } from '../../search-index.ts';

const records = searchRecords(fixtureLibrary);
const terms = searchTerms(records);
let open: OpenIndex;
let asked = 0;

beforeAll(async () => {
  open = await openIndexFiles(await indexFiles(records), '/sub/');
});

afterAll(() => open.close());

const ground = (chosen: Record<string, string> = {}): Ground => ({
  index: open.index,
  chosen,
  correct: (words) => {
    asked += 1;
    return Promise.resolve(didYouMean(words, terms));
  },
});

const paths = ({ hits }: Answer): Promise<string[]> =>
  Promise.all(hits.map(async (hit) => new URL((await hit.data()).url).pathname));

describe('look-up', () => {
  it('finds a page by a name, its address with the base path', async () => {
    const answer = await lookUp('ROM', ground());
    expect((await paths(answer))[0]).toBe('/sub/protocols/wrist/wrist-bend/');
    expect(answer).not.toHaveProperty('meant');
  });

  it('asks for no correction while there is an answer', async () => {
    asked = 0;
    await lookUp('wrist', ground());
    expect(asked).toBe(0);
  });

  it('puts a mistyped word right', async () => {
    const answer = await lookUp('look wirst', ground());
    expect(answer.meant).toBe('look wrist');
    expect(await paths(answer)).toContain('/sub/protocols/wrist/wrist-look/');
  });

  it('takes nothing for an answer that has not the word', async () => {
    const raw = await open.index.search('azzz', { filters: {} });
    expect(raw.results.length).toBeGreaterThan(0);
    expect(await lookUp('azzz', ground())).toEqual({ hits: [] });
  });

  it('gives pages with some of the words where none has all, and says so', async () => {
    const answer = await lookUp('goniometer goodbye', ground());
    expect(answer.partly).toBe(true);
    expect((await paths(answer)).slice(0, 2).toSorted()).toEqual([
      '/sub/protocols/preparation/finish-and-explain/',
      '/sub/protocols/wrist/wrist-bend/',
    ]);
  });

  it('looks for pages with some of the words that were put right', async () => {
    const answer = await lookUp('wirst goodbye', ground());
    expect(answer).toMatchObject({ meant: 'wrist goodbye', partly: true });
    expect(await paths(answer)).toContain('/sub/protocols/wrist/wrist-look/');
  });

  it('does not stumble over the small words of a question', async () => {
    expect((await paths(await lookUp('how do I check the ROM?', ground())))[0]).toBe(
      '/sub/protocols/wrist/wrist-bend/',
    );
  });

  it('keeps to what was chosen', async () => {
    expect(await paths(await lookUp('wrist', ground({ scope: 'Complete' })))).toEqual([
      '/sub/protocols/wrist/wrist-bend/',
    ]);
  });

  it('lists everything that was chosen, in order of examination, without words', async () => {
    expect(await paths(await lookUp(' ', ground({ position: 'Standing' })))).toEqual([
      '/sub/protocols/preparation/wash-hands/',
      '/sub/protocols/preparation/finish-and-explain/',
      '/sub/protocols/wrist/wrist-bend/',
    ]);
  });

  it('gives nothing for nothing', async () => {
    expect(await lookUp('', ground())).toEqual({ hits: [] });
  });
});

describe('counts', () => {
  it('are of what each value would leave', async () => {
    expect(await countsOf('scope', 'wrist', ground())).toMatchObject({ Screening: 1, Complete: 1, Preparation: 0 });
  });

  it('heed the other filters and not their own', async () => {
    const chosen = { scope: 'Complete', position: 'Standing' };
    expect(await countsOf('scope', 'wrist', ground(chosen))).toMatchObject({ Screening: 0, Complete: 1 });
  });

  it('are of the whole library without words', async () => {
    expect(await countsOf('system', '', ground())).toMatchObject({ Preparation: 3, Wrist: 3 });
  });
});
