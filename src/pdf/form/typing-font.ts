import * as fontkit from '@cantoo/fontkit';
import { type PDFContext, type PDFRef } from '@cantoo/pdf-lib';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import subsetFont from 'subset-font';

/** Name of the font in the form's resources, as fields refer to it. */
export const typingFontName = 'FiraSans';

const face = '@expo-google-fonts/fira-sans/400Regular/FiraSans_400Regular.ttf';
const firstCode = 32;
const lastCode = 255;

/** A typed letter is one byte in WinAnsi, which is Windows code page 1252 (ISO 32000-1, annex D.2). */
const characterOf = (code: number): string => new TextDecoder('windows-1252').decode(Uint8Array.of(code));
const codes = Array.from({ length: lastCode - firstCode + 1 }, (_, index) => firstCode + index);

interface TypingFont {
  /** TrueType with the glyphs of WinAnsi alone. */
  bytes: Buffer;
  /** Advance widths by code from 32, and the rest of the numbers, in thousandths of the type size. */
  widths: number[];
  ascent: number;
  descent: number;
  capHeight: number;
  box: number[];
}

async function readTypingFont(): Promise<TypingFont> {
  const full = readFileSync(createRequire(join(process.cwd(), 'package.json')).resolve(face));
  const bytes = await subsetFont(full, codes.map(characterOf).join(''), {
    targetFormat: 'truetype',
    noHinting: true,
    keepFeatures: [],
  });
  const font = fontkit.create(full);
  if (!('unitsPerEm' in font)) throw new Error(`${face} is a collection of fonts; one font is expected`);
  const scaled = (units: number): number => Math.round((units * 1000) / font.unitsPerEm);
  const width = (code: number): number =>
    scaled(font.glyphForCodePoint(characterOf(code).codePointAt(0) ?? 0)?.advanceWidth ?? 0);
  const { minX, minY, maxX, maxY } = font.bbox;
  return {
    bytes,
    widths: codes.map(width),
    ascent: scaled(font.ascent),
    descent: scaled(font.descent),
    capHeight: scaled(font.capHeight),
    box: [minX, minY, maxX, maxY].map(scaled),
  };
}

let shared: Promise<TypingFont> | undefined;

/** Non-symbolic, ISO 32000-1, table 123. */
const nonSymbolic = 32;
/** Thickness of an upright stem in thousandths; readers use it only when they replace the font. */
const stem = 80;

/**
 * Puts the font that fields are typed in into a document: Fira Sans, a simple TrueType font in WinAnsi encoding.
 * Rejects when the font package is not installed.
 */
export async function embedTypingFont(context: PDFContext): Promise<PDFRef> {
  const { bytes, widths, ascent, descent, capHeight, box } = await (shared ??= readTypingFont());
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
      ...{ FirstChar: firstCode, LastChar: lastCode, Widths: widths, FontDescriptor: descriptor },
    }),
  );
}
