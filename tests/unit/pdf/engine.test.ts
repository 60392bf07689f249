import { describe, expect, test } from 'vitest';
import { compilePdf, keepWith, queryDocument } from '../../../src/pdf/engine.ts';
import { fontBlobs, faces } from '../../../src/pdf/fonts.ts';
import { TypesettingError } from '../../../src/pdf/typesetting-error.ts';
import { fontLines, told } from '../../fixtures/pdf-tools.ts';

const fixture = (name: string, data: unknown = {}) => ({ template: `../../../tests/fixtures/typst/${name}.typ`, data });
const sound = (title: string) =>
  fixture('sound', {
    title,
    runs: [
      { text: 'Up to 3\u2009cm, ≤\u202f4 ≥ 2 → 5 − 1 × ½ ' },
      { text: 'bold', bold: true },
      { text: ' both', bold: true, italic: true },
    ],
  });
describe('compilePdf', () => {
  test('gives a sound, tagged, titled document with every font embedded', () => {
    const bytes = compilePdf(sound('A card'));
    expect(told('qpdf', bytes, '--check')).toContain('No syntax or stream encoding errors');
    expect(told('pdfinfo', bytes)).toMatch(/Title:\s+A card\n/);
    expect(told('pdfinfo', bytes)).toMatch(/Tagged:\s+yes/);
    const fonts = fontLines(bytes);
    expect(fonts.length).toBeGreaterThanOrEqual(3);
    for (const font of fonts) expect(font).toMatch(/ yes +yes +yes +\d/);
  });

  test('gives the same bytes for the same request, whatever was set between', () => {
    const first = compilePdf(sound('Same'));
    compilePdf(sound('Other'));
    expect(Buffer.compare(compilePdf(sound('Same')), first)).toBe(0);
  });

  test('keeps number and unit together by a space that readers can extract', () => {
    expect(told('pdftotext', compilePdf(sound('Spaces')))).toMatch(/Up to 3[ \u00a0]cm, ≤[ \u00a0]4 ≥ 2 → 5 − 1 × ½/);
  });
});

describe('what cannot be set', () => {
  test.each([
    ['panics', {}, 'panics.typ:4:4  panicked with: "does not fit"'],
    ['warns', {}, 'warns.typ:2:34  unknown font family: fira sanx'],
    ['says', { text: 'tick ✓' }, /says\.typ {2}PDF\/UA-1 error: .*✓.*could not be displayed/s],
    ['untitled', {}, /untitled\.typ {2}PDF\/UA-1 error: missing document title/],
    ['picture-without-words', {}, /picture-without-words\.typ {2}PDF\/UA-1 error: missing alt text/],
    ['absent', {}, /file not found/],
  ])('%s fails by name', (name, data, message) => {
    expect(() => compilePdf(fixture(name, data))).toThrow(TypesettingError);
    expect(() => compilePdf(fixture(name, data))).toThrow(message);
  });

  test('the engine sets the next document after a failure', () => {
    expect(() => compilePdf(fixture('panics'))).toThrow(TypesettingError);
    expect(compilePdf(sound('After')).length).toBeGreaterThan(1000);
  });
});

test('queryDocument answers what the template left in its metadata', () => {
  expect(queryDocument(sound('Asked'), '<seen>')).toEqual([{ seen: 'Asked' }]);
});

describe('what is kept', () => {
  const store = new Map<string, Uint8Array<ArrayBuffer>>();
  const keeper = {
    read: (name: string) => store.get(name),
    write: (name: string, made: Uint8Array) => void store.set(name, new Uint8Array(made)),
  };

  test('stands for the same request alone', () => {
    const [plain, asked] = [compilePdf(sound('Kept')), queryDocument(sound('Kept'), '<seen>')];
    keepWith(keeper);
    try {
      for (let run = 0; run < 2; run++) {
        expect(Buffer.compare(compilePdf(sound('Kept')), plain)).toBe(0);
        expect(queryDocument(sound('Kept'), '<seen>')).toEqual(asked);
        expect(store.size).toBe(2);
      }
      expect(queryDocument(sound('Other'), '<seen>')).toEqual([{ seen: 'Other' }]);
      expect(store.size).toBe(3);
      expect(() => compilePdf(fixture('panics'))).toThrow(TypesettingError);
      expect(store.size).toBe(3);
    } finally {
      keepWith(undefined);
    }
  });
});

test('every face is a TrueType file', () => {
  const blobs = fontBlobs();
  expect(blobs).toHaveLength(faces.length);
  for (const blob of blobs) expect(blob.readUInt32BE(0)).toBe(0x00010000);
});
