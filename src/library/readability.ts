import { syllable } from 'syllable';

/**
 * Flesch–Kincaid grade of English text: 0.39 × words per sentence + 11.8 × syllables per word − 15.59.
 * Source: Kincaid JP, Fishburne RP, Rogers RL, Chissom BS. Derivation of new readability formulas
 * for Navy enlisted personnel. Research Branch Report 8-75, 1975. Text without a word has grade 0.
 */
export function fleschKincaidGrade(text: string): number {
  const words = wordsOf(text);
  if (words.length === 0) return 0;
  const sentences = Math.max(1, text.split(/[.!?]+(?=\s|$)/).filter((part) => /[\p{L}\p{N}]/u.test(part)).length);
  const syllables = words.reduce((sum, word) => sum + Math.max(1, syllable(word)), 0);
  return 0.39 * (words.length / sentences) + 11.8 * (syllables / words.length) - 15.59;
}

/** The words of a text: runs of letters, digits, apostrophes and hyphens. */
export function wordsOf(text: string): string[] {
  return text.match(/[\p{L}\p{N}][\p{L}\p{N}'’-]*/gu) ?? [];
}
