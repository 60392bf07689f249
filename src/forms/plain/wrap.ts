/** Characters in a line of plain text. */
const lineLength = 80;

/** Words that must stay together are held by spaces that do not break; plain text has them as ordinary ones. */
const unbreaking = /[\u00a0\u202f\u2007]/g;

/** How lines begin: the first with words of its own, the others with as many spaces. */
export interface Indent {
  first: string;
  /** Spaces before every other line; default the length of `first`. */
  rest?: number;
}

/** Pieces in lines of at most 80 characters; a piece longer than a line keeps a line of its own. */
export function wrappedPieces(pieces: readonly string[], between: string, indent: Indent): string[] {
  const { first, rest = first.length } = indent;
  const rows = pieces.reduce<string[][]>((done, piece) => {
    const row = done.at(-1);
    const used = [...(row ?? []), piece].join(between).length + (done.length > 1 ? rest : first.length);
    return row === undefined || used > lineLength ? [...done, [piece]] : [...done.slice(0, -1), [...row, piece]];
  }, []);
  const lines = rows.map((row, index) => `${index === 0 ? first : ' '.repeat(rest)}${row.join(between)}`);
  return lines.map((line) => line.replaceAll(unbreaking, ' '));
}

/** Text in lines of at most 80 characters, broken between words. */
export const wrapped = (text: string, first = '', rest = first.length): string[] =>
  wrappedPieces(text.split(' '), ' ', { first, rest });
