import damerauLevenshtein from 'damerau-levenshtein';
import type { SearchRecord } from './record.ts';
import { everyWordOf, wordsOf } from './words.ts';

/**
 * The words of titles and other names that a mistyped word may have meant, commonest first. Names hold misspellings on
 * purpose; a rare word that is a slip away from a commoner one is taken for one and left out.
 */
export function searchTerms(records: readonly SearchRecord[]): string[] {
  const uses = usesOf(records);
  const use = (word: string): number => uses.get(word) ?? 0;
  const names = wordsOf(records.flatMap(({ title, names: others }) => [title, ...others]).join(' '));
  const known = names.filter((word) => word.length > 2 && !/\d/.test(word));
  return known
    .filter((word) => use(word) > 2 || !known.some((other) => use(other) >= 2 * use(word) && isSlipOf(word, other)))
    .sort((a, b) => use(b) - use(a) || (a < b ? -1 : 1));
}

function usesOf(records: readonly SearchRecord[]): Map<string, number> {
  const uses = new Map<string, number>();
  for (const { title, names, passages } of records) {
    const text = [title, ...names, ...passages.map((passage) => passage.text)].join(' ');
    for (const word of everyWordOf(text)) uses.set(word, (uses.get(word) ?? 0) + 1);
  }
  return uses;
}

/** A slip leaves the beginning or the end of the word alone; a longer or shorter form of the same word is none. */
function isSlipOf(word: string, other: string): boolean {
  if (word.length < 5 || Math.abs(word.length - other.length) > 2) return false;
  if (word.startsWith(other) || other.startsWith(word)) return false;
  if (word.slice(0, 3) !== other.slice(0, 3) && word.slice(-4) !== other.slice(-4)) return false;
  return damerauLevenshtein(word, other).steps <= (word.length < 9 ? 1 : 2);
}
