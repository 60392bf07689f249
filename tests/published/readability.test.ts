import { describe, expect, it } from 'vitest';
import { countText, gradeFromCounts } from '../../src/library/readability.ts';

describe('the Flesch–Kincaid grade', () => {
  // Coefficients 0.39, 11.8 and 15.59: US Department of Veterans Affairs, HSR&D measurement page (archived 2009),
  // "(.39 x ASL) + (11.8 x ASW) - 15.59", after Kincaid et al. 1975.
  it('has the published coefficients', () => {
    const base = gradeFromCounts({ sentences: 1, words: 10, syllables: 10 });
    expect(base).toBeCloseTo(0.39 * 10 + 11.8 - 15.59, 10);
    expect(gradeFromCounts({ sentences: 1, words: 10, syllables: 20 }) - base).toBeCloseTo(11.8, 10);
    expect(gradeFromCounts({ sentences: 10, words: 10, syllables: 10 }) - base).toBeCloseTo(-0.39 * 9, 10);
  });

  // Worked example in the readme of the package flesch-kincaid 2.0.1 (Titus Wormer): 1 sentence, 13 words, 26 syllables → 13.08.
  it('agrees with a worked example of another implementation', () => {
    expect(gradeFromCounts({ sentences: 1, words: 13, syllables: 26 })).toBeCloseTo(13.08, 2);
  });

  // "Flesch–Kincaid readability tests", encyclopedia article: the platypus sentence has 24 syllables, 13 words and grade 11.3.
  it('agrees with the encyclopedia example', () => {
    expect(gradeFromCounts({ sentences: 1, words: 13, syllables: 24 })).toBeCloseTo(11.3, 1);
  });

  // The same two sources count 13 words in one sentence; they differ on syllables (24 and 26), so the estimate must lie there.
  it('counts the words, sentences and syllables of that example', () => {
    const counts = countText('The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.');
    expect(counts).toMatchObject({ words: 13, sentences: 1 });
    expect(counts.syllables).toBeGreaterThanOrEqual(24);
    expect(counts.syllables).toBeLessThanOrEqual(26);
  });

  // Package flesch 1.0.0 (Titus Wormer), readme: "The cat sat on the mat" has 1 sentence, 6 words, 6 syllables.
  it('counts a sentence of one-syllable words', () => {
    expect(countText('The cat sat on the mat.')).toEqual({ sentences: 1, words: 6, syllables: 6 });
  });
});
