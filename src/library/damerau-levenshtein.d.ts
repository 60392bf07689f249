declare module 'damerau-levenshtein' {
  /** Edit distance in which swapping two neighbours is one step. */
  export default function damerauLevenshtein(
    a: string,
    b: string,
  ): { steps: number; relative: number; similarity: number };
}
