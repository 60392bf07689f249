import { describe, expect, it } from 'vitest';
import { curlyQuotes } from '../../../src/library/mdx/quotes.ts';

describe('quotation marks', () => {
  it.each([
    ['say "ah" now', 'say “ah” now'],
    ['"Breathe out."', '“Breathe out.”'],
    ["it's the patient's", 'it’s the patient’s'],
    ['("yes")', '(“yes”)'],
    ["call it 'full'", 'call it ‘full’'],
    ['as "a \'b\' c"', 'as “a ‘b’ c”'],
    ['no quotes', 'no quotes'],
  ])('in %s are set as %s', (written, set) => {
    expect(curlyQuotes(written)).toBe(set);
  });
});
