/** So many letters fit into any column of the form, whatever letters they are: none is wider than its size. */
const surelyFits = 12;

/** The words, or parts of words that may break, that could be wider than a column: the template measures these alone. */
export const longWords = (text: string): string[] =>
  text.split(/[\s–-]+/).filter((word) => Array.from(word).length > surelyFits);
