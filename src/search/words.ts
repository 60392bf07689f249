/** The words of a text in small letters; an apostrophe is dropped, a hyphen parts. */
export function everyWordOf(text: string): string[] {
  return (
    text
      .toLowerCase()
      .replaceAll(/['’]/g, '')
      .match(/[\p{L}\p{N}]+/gu) ?? []
  );
}

/** The different words of a text, in order of first appearance. */
export function wordsOf(text: string): string[] {
  return [...new Set(everyWordOf(text))];
}

const inflection = /(?:es|e|s)$/;
const derivation = /(?:ity|e?ments?|ions?|ings?|ed|y)$/;

/** Whether a page that has `word` answers to `typed`: it begins so, or differs only in its ending. */
export function answersTo(typed: string, word: string): boolean {
  if (word.startsWith(typed)) return true;
  const root = typed.replace(derivation, '');
  if (root !== typed && (word === root || (root.length > 4 && word.startsWith(root)))) return true;
  return Math.min(typed.length, word.length) > 3 && typed.replace(inflection, '') === word.replace(inflection, '');
}

/** Whether the index, which cuts words down further, may have given a page that has `word` for `typed`. */
export function mayAnswerTo(typed: string, word: string): boolean {
  return answersTo(typed, word) || (typed.length > 5 && word.startsWith(typed.replace(/e$/, '')));
}
