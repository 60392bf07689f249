import type { TypingFont } from '../pdf/form/typing-font.ts';

/** What a browser needs beside the typesetter, in a file. */
export interface Typesetting {
  /** Text of the form's template and of those that it is made of, by name. */
  templates: Record<string, string>;
  /** Names of the files of every face, in the order of Node's. */
  faces: string[];
  /** First and last code point of each run of signs that every face has. */
  glyphs: [number, number][];
  /** The font that fields are typed in; its bytes are a file beside. */
  typing: Omit<TypingFont, 'bytes'> & { file: string };
}
