import { syllable } from 'syllable';

/** What the grade of a text is made from. */
export interface TextCounts {
  sentences: number;
  words: number;
  syllables: number;
}

/**
 * Flesch–Kincaid grade: 0.39 × words per sentence + 11.8 × syllables per word − 15.59, in US school years.
 * Source: Kincaid JP, Fishburne RP, Rogers RL, Chissom BS. Derivation of new readability formulas
 * for Navy enlisted personnel. Research Branch Report 8-75, 1975.
 */
export function gradeFromCounts({ sentences, words, syllables }: TextCounts): number {
  return 0.39 * (words / sentences) + 11.8 * (syllables / words) - 15.59;
}

/** Flesch–Kincaid grade of English text; syllables are estimated by the `syllable` package. Text without a word has grade 0. */
export function fleschKincaidGrade(text: string): number {
  const counts = countText(text);
  return counts.words === 0 ? 0 : gradeFromCounts(counts);
}

/** Sentences (at least one), words and syllables of a text. */
export function countText(text: string): TextCounts {
  const words = wordsOf(text);
  const sentences = text.split(/[.!?]+(?=\s|$)/).filter((part) => wordsOf(part).length > 0).length;
  const syllables = words.reduce((sum, word) => sum + Math.max(1, syllable(word)), 0);
  return { sentences: Math.max(1, sentences), words: words.length, syllables };
}

/** The words of a text: runs of letters, digits, apostrophes and hyphens. */
export function wordsOf(text: string): string[] {
  return text.match(/[\p{L}\p{N}][\p{L}\p{N}'’-]*/gu) ?? [];
}
