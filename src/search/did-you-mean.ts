import damerauLevenshtein from 'damerau-levenshtein';
import { answersTo } from './words.ts';

/**
 * The words that were probably meant, or undefined when every word is known or nothing is near.
 * `terms` are known words, commonest first; the nearest wins, and of those equally near the commonest.
 */
export function didYouMean(words: readonly string[], terms: readonly string[]): string[] | undefined {
  const meant = words.map((word) => (isKnown(word, terms) ? word : (nearest(word, terms) ?? word)));
  return meant.every((word, i) => word === words[i]) ? undefined : meant;
}

const isKnown = (word: string, terms: readonly string[]): boolean => terms.some((term) => answersTo(word, term));

/** One slip in a short word, two in a longer one; in a word of three letters only two changed about or one left out. */
function nearest(word: string, terms: readonly string[]): string | undefined {
  const slips = word.length < 6 ? 1 : 2;
  let best: { term: string; steps: number } | undefined;
  for (const term of terms) {
    if (Math.abs(term.length - word.length) > slips || (word.length < 4 && !holdsLetters(term, word))) continue;
    const steps = damerauLevenshtein(word, term).steps;
    if (steps <= slips && (best === undefined || steps < best.steps)) best = { term, steps };
  }
  return best?.term;
}

const holdsLetters = (term: string, word: string): boolean =>
  term.length >= word.length && Array.from(word).every((letter) => term.includes(letter));
