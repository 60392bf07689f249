import { describe, expect, it, test } from 'vitest';
import { didYouMean } from '../../../src/search/did-you-mean.ts';
import { searchRecords } from '../../../src/search/records.ts';
import type { SearchRecord } from '../../../src/search/record.ts';
import { searchTerms } from '../../../src/search/terms.ts';
import { fixtureLibrary } from '../../fixtures/library.ts';

const terms = ['neck', 'liver', 'spleen', 'jugular', 'jvp', 'jvd', 'carotid', 'palpation', 'side', 'size', 'bruit'];
const meant = (typed: string): string | undefined => didYouMean(typed.split(' '), terms)?.join(' ');

describe('did you mean', () => {
  test.each([
    ['spelen', 'spleen'],
    ['spleeen', 'spleen'],
    ['jugluar', 'jugular'],
    ['carrotid bruit', 'carotid bruit'],
    ['palpatoin', 'palpation'],
    ['necj', 'neck'],
  ])('"%s": "%s"', (typed, wanted) => {
    expect(meant(typed)).toBe(wanted);
  });

  it('takes two letters changed about or one left out, and nothing else, for a slip in a word of three', () => {
    expect(meant('jpv')).toBe('jvp');
    expect(meant('nek')).toBe('neck');
    expect(meant('jvx')).toBeUndefined();
    expect(meant('abc')).toBeUndefined();
  });

  it('leaves words that are known, begun or otherwise ended', () => {
    expect(meant('neck')).toBeUndefined();
    expect(meant('jug')).toBeUndefined();
    expect(meant('palpating liver')).toBeUndefined();
  });

  it('mends only the word that needs it', () => {
    expect(meant('liver spelen unheard')).toBe('liver spleen unheard');
  });

  it('prefers the nearer, and of those equally near the commoner', () => {
    expect(meant('sise')).toBe('side');
    expect(didYouMean(['sise'], ['size', 'side'])).toEqual(['size']);
    expect(didYouMean(['carotidd'], ['carotoid', 'carotid'])).toEqual(['carotid']);
  });

  it('has nothing to offer for what is far from everything', () => {
    expect(meant('xyzzy')).toBeUndefined();
  });
});

describe('terms', () => {
  const record = (title: string, names: string[], text: string): SearchRecord => ({
    ...{
      url: '/x/',
      kind: 'Manoeuvre',
      title,
      names,
      passages: [{ text, weight: 1 }],
      spellings: [],
      filters: {},
      shown: {},
    },
  });

  it('are the words of titles and other names, commonest first', () => {
    const found = searchTerms([record('Feel the spleen', ['splenic tip'], 'The spleen moves. The tip is soft.')]);
    expect(found).toEqual(['the', 'spleen', 'tip', 'feel', 'splenic']);
  });

  it('leave out a misspelling that stands among the names on purpose', () => {
    const found = searchTerms([
      record('Feel the thyroid', ['thyriod', 'thyroid gland'], 'The thyroid rises; the thyroid is soft.'),
    ]);
    expect(found).toContain('thyroid');
    expect(found).not.toContain('thyriod');
  });

  it('keep a rare word that is merely like another', () => {
    const found = searchTerms([record('Look at the gait', ['gland', 'grand'], 'A gland. A gland. A gland.')]);
    expect(found).toContain('grand');
  });

  it('keep another form of the same word', () => {
    const found = searchTerms([
      record('Neck nodes', ['nodal'], 'nodes nodes nodes'),
      record('One nodule', ['nodules'], 'nodule'),
    ]);
    expect(found).toEqual(expect.arrayContaining(['nodes', 'nodule', 'nodules']));
  });

  it('are the same each time', () => {
    const records = searchRecords(fixtureLibrary);
    expect(searchTerms(records)).toEqual(searchTerms(records));
    expect(searchTerms(records)).toContain('wrist');
  });
});
