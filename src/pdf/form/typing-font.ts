import type { PDFContext, PDFRef } from '@cantoo/pdf-lib';

/** Name of the font in the form's resources, as fields refer to it. */
export const typingFontName = 'FiraSans';

/** Codes of the font: the printable ones of WinAnsi. */
export const typingCodes = { first: 32, last: 255 } as const;

/** The font that fields are typed in, with what a document says of it. */
export interface TypingFont {
  /** TrueType with the glyphs of WinAnsi alone. */
  bytes: Uint8Array;
  /** Advance widths by code from 32, and the rest of the numbers, in thousandths of the type size. */
  widths: number[];
  ascent: number;
  descent: number;
  capHeight: number;
  box: number[];
}

/** Non-symbolic, ISO 32000-1, table 123. */
const nonSymbolic = 32;
/** Thickness of an upright stem in thousandths; readers use it only when they replace the font. */
const stem = 80;

/** Puts the font that fields are typed in into a document: Fira Sans, a simple TrueType font in WinAnsi encoding. */
export function embedTypingFont(context: PDFContext, typing: TypingFont): PDFRef {
  const { bytes, widths, ascent, descent, capHeight, box } = typing;
  const file = context.register(context.flateStream(bytes, { Length1: bytes.length }));
  const descriptor = context.register(
    context.obj({
      ...{ Type: 'FontDescriptor', FontName: typingFontName, Flags: nonSymbolic, FontBBox: box, ItalicAngle: 0 },
      ...{ Ascent: ascent, Descent: descent, CapHeight: capHeight, StemV: stem, FontFile2: file },
    }),
  );
  return context.register(
    context.obj({
      ...{ Type: 'Font', Subtype: 'TrueType', BaseFont: typingFontName, Encoding: 'WinAnsiEncoding' },
      ...{ FirstChar: typingCodes.first, LastChar: typingCodes.last, Widths: widths, FontDescriptor: descriptor },
    }),
  );
}
