import damerauLevenshtein from 'damerau-levenshtein';

/**
 * The known word nearest to what was written and not the same, or undefined when none is near
 * (more than three edits, or more than two fifths of the word).
 */
export function suggest(word: string, known: Iterable<string>): string | undefined {
  let best: { name: string; steps: number } | undefined;
  for (const name of known) {
    if (name === word) continue;
    const steps = damerauLevenshtein(word.toLowerCase(), name.toLowerCase()).steps;
    if (best === undefined || steps < best.steps) best = { name, steps };
  }
  const limit = Math.min(3, Math.max(1, Math.floor(word.length * 0.4)));
  return best !== undefined && best.steps <= limit ? best.name : undefined;
}

/** ` Did you mean "x"?`, or nothing. */
export function didYouMean(word: string, known: Iterable<string>): string {
  const near = suggest(word, known);
  return near === undefined ? '' : ` Did you mean "${near}"?`;
}
