import { crc32 } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { checkDigits, sheetCode, sheetEdition } from '../../../src/components/sheet-code.ts';

describe('the check digits', () => {
  it('are those of the published check of CRC-32: ITU-T V.42, "123456789"', () => {
    expect(checkDigits('123456789')).toBe('cbf43926');
  });

  it.each(['', 'a', 'Head to toe: 30–45°', 'x'.repeat(9999)])('are those that zlib finds: %s', (text) => {
    expect(checkDigits(text)).toBe(crc32(text).toString(16).padStart(8, '0'));
  });
});

describe('the code of a sheet', () => {
  const code = sheetCode(['Chest pain'], '<h2>One</h2><p>A <a href="/a/">word</a>.</p>');

  it('is the same for the same words at another address and level', () => {
    expect(sheetCode(['Chest pain'], '<h3 id="x">One</h3> <p>A <a href="/sub/a/">word</a>.</p>')).toBe(code);
  });

  it('changes with a word, of the head too', () => {
    expect(sheetCode(['Chest pain'], '<h2>One</h2><p>A <a href="/a/">world</a>.</p>')).not.toBe(code);
    expect(sheetCode(['Chest'], '<h2>One</h2><p>A <a href="/a/">word</a>.</p>')).not.toBe(code);
  });
});

describe('the foot of a sheet', () => {
  it('names the library, the sheet, its form and its code', () => {
    const sheet = {
      library: '0.1.0',
      title: 'Chest pain',
      form: { id: 'chest-pain', version: '1.0.0' },
      code: 'c0ffee00',
    };
    expect(sheetEdition(sheet)).toBe('Fingerbreadth 0.1.0 · Run sheet: Chest pain · chest-pain 1.0.0 · code c0ffee00');
  });

  it('has no code while the sheet is not whole, and no form where none was chosen', () => {
    expect(sheetEdition({ library: '0.1.0', title: 'Neck', form: undefined, code: undefined })).toBe(
      'Fingerbreadth 0.1.0 · Run sheet: Neck',
    );
  });
});
