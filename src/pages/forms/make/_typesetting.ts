import * as fontkit from '@cantoo/fontkit';
import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { runsOf } from '../../../client/make-glyphs.ts';
import type { Typesetting } from '../../../client/make-typesetting.ts';
import { faces, fontBlobs } from '../../../pdf/fonts.ts';
import { typingFont } from '../../../pdf/form/read-typing-font.ts';

const folder = 'src/pdf/templates';

/** Name of the file of the font that fields are typed in. */
const typingFile = 'typing.ttf';

/** The files of fonts that PDFs are made with in a browser, by name. */
export async function fontFiles(): Promise<Map<string, Uint8Array<ArrayBuffer>>> {
  const blobs = fontBlobs();
  const { bytes } = await typingFont();
  const files = faces.map((face, index) => [basename(face), new Uint8Array(blobs[index] ?? [])] as const);
  return new Map([...files, [typingFile, new Uint8Array(bytes)]]);
}

/** What a browser is told of typesetting. Rejects when a font package is not installed. */
export async function typesetting(): Promise<Typesetting> {
  const { bytes: _bytes, ...typing } = await typingFont();
  return {
    templates: templatesFrom('form.typ'),
    faces: faces.map((face) => basename(face)),
    glyphs: runsOf(commonSigns()),
    typing: { ...typing, file: typingFile },
  };
}

/** A template with every one that it imports, directly or not. */
function templatesFrom(name: string, found: Record<string, string> = {}): Record<string, string> {
  if (name in found) return found;
  found[name] = readFileSync(join(folder, name), 'utf8');
  for (const [, imported = ''] of found[name].matchAll(/#import "([^"]+)"/g)) templatesFrom(imported, found);
  return found;
}

/** Code points that every face has, and those that the templates set in another way (common.typ, house). */
function commonSigns(): number[] {
  const sets = fontBlobs().map((blob) => {
    const font = fontkit.create(blob);
    if (!('characterSet' in font)) throw new Error('A face is a collection of fonts; one font is expected.');
    return new Set(font.characterSet);
  });
  const common = [...(sets[0] ?? [])].filter((code) => sets.every((set) => set.has(code)));
  return [...common, 0x2009, 0x202f, 0x2011];
}
