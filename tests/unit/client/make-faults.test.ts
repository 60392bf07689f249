/** What is amiss with a form before it is made is said beside the field that it is about. */
import { describe, expect, it } from 'vitest';
import { makeFaults } from '../../../src/client/make-faults.ts';
import { missingSigns, runsOf } from '../../../src/client/make-glyphs.ts';

const sound = { title: 'Our visit', purpose: 'To try.', leavesOut: 'All else.', publisher: 'Practice', url: '' };

describe('the faults of a form', () => {
  it('are none when everything is said', () => {
    expect(makeFaults(sound, 1)).toEqual({});
  });

  it.each(['title', 'purpose', 'leavesOut', 'publisher'] as const)('stand beside an empty %s', (field) => {
    const faults = makeFaults({ ...sound, [field]: ' \n ' }, 1);
    expect(Object.keys(faults)).toEqual([field]);
    expect(faults[field]).toMatch(/^(Give|Say) /);
  });

  it('say of a word that no column holds', () => {
    expect(makeFaults({ ...sound, purpose: `To ${'x'.repeat(31)}.` }, 1).purpose).toContain('longest word');
    expect(makeFaults({ ...sound, purpose: `To ${'x'.repeat(29)}.` }, 1)).toEqual({});
  });

  it('stand beside the manoeuvres when there is none', () => {
    expect(makeFaults(sound, 0)).toEqual({ manoeuvres: 'Choose an examination, or tick at least one manoeuvre.' });
  });

  it('say that the project publishes no form of others', () => {
    expect(makeFaults({ ...sound, publisher: ' fingerbreadth' }, 1).publisher).toContain('not Fingerbreadth');
  });

  it.each(['https://forms.example.org/visit', 'urn:uuid:dc01a95c-da79-8ba0-a264-afb46030ad2e', ''])(
    'are none for the name %s',
    (url) => {
      expect(makeFaults({ ...sound, url }, 1)).toEqual({});
    },
  );

  it.each([
    'http://forms.example.org/visit',
    'forms.example.org/visit',
    'https://nowhere',
    'https://forms.example.org/visit#one',
    'https://forms.example.org/visit|1.0.0',
    'https://forms.example.org/a visit',
    'urn:uuid:dc01a95c',
    'urn:isbn:0451450523',
    'https://fingerbreadth.example/forms/short-visit',
    'https://www.fingerbreadth.example',
  ])('stand beside the name %s', (url) => {
    expect(Object.keys(makeFaults({ ...sound, url }, 1))).toEqual(['url']);
  });
});

describe('signs that a typeface lacks', () => {
  it('are each named once', () => {
    const runs = runsOf([98, 97, 99, 32, 0x2265]);
    expect(runs).toEqual([
      [32, 32],
      [97, 99],
      [0x2265, 0x2265],
    ]);
    expect(missingSigns('ab ≥ c', runs)).toEqual([]);
    expect(missingSigns('abd字d😀', runs)).toEqual(['d', '字', '😀']);
  });
});
