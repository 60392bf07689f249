import * as fontkit from '@cantoo/fontkit';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import subsetFont from 'subset-font';
import { typingCodes, type TypingFont } from './typing-font.ts';

const face = '@expo-google-fonts/fira-sans/400Regular/FiraSans_400Regular.ttf';

/** A typed letter is one byte in WinAnsi, which is Windows code page 1252 (ISO 32000-1, annex D.2). */
const characterOf = (code: number): string => new TextDecoder('windows-1252').decode(Uint8Array.of(code));
const codes = Array.from({ length: typingCodes.last - typingCodes.first + 1 }, (_, index) => typingCodes.first + index);

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

/** The font that fields are typed in, read once. Rejects when the font package is not installed. */
export const typingFont = (): Promise<TypingFont> => (shared ??= readTypingFont());
