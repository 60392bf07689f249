import { describe, expect, it } from 'vitest';
import { quotation } from '../../../src/search/quotation.ts';

const page = {
  url: '/x/',
  content: 'Is the spleen large? Firm: blood disease of 2.5 cm. Kernig sign with firm edges. Stop if it hurts.',
  meta: { title: 'Feel for the spleen tip', names: 'splenomegaly; LUQ' },
};

const said = (typed: string): string =>
  quotation(page, typed)
    .map(({ text, marked }) => (marked ? `[${text}]` : text))
    .join('');

describe('what a result says', () => {
  it('is what the page is for when a name shows why it was found', () => {
    expect(said('splenomegaly')).toBe('Is the spleen large?');
    expect(said('feel tip')).toBe('Is the spleen large?');
  });

  it('is what the page is for when that holds a word', () => {
    expect(said('large firm')).toBe('Is the spleen [large]?');
  });

  it('is the sentence that holds most of the words otherwise, the first of several', () => {
    expect(said('firm')).toBe('… [Firm]: blood disease of 2.5 cm.');
    expect(said('firm edge')).toBe('… Kernig sign with [firm] [edges].');
  });

  it('does not break a sentence at a decimal point', () => {
    expect(said('disease')).toBe('… Firm: blood [disease] of 2.5 cm.');
  });

  it('is what the page is for when no sentence holds a word, and for no words', () => {
    expect(said('supine')).toBe('Is the spleen large?');
    expect(said('')).toBe('Is the spleen large?');
  });

  it('marks words begun, and words with an apostrophe', () => {
    expect(said("kernig's")).toBe('… [Kernig] sign with firm edges.');
    expect(said('kern')).toBe('… [Kernig] sign with firm edges.');
  });

  it('is empty for a page without text', () => {
    expect(quotation({ ...page, content: '' }, 'spleen')).toEqual([]);
  });
});
