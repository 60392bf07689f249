import { describe, expect, it } from 'vitest';
import { durationText, joined, labelOf, midSentence, sidesText, stagesText } from '../../../src/components/labels.ts';

const positions = [
  { id: 'sitting', label: 'Sitting' },
  { id: 'supine', label: 'Supine' },
  { id: 'standing', label: 'Standing' },
];

describe('positions in words', () => {
  it.each<[string[][], string]>([
    [[['sitting']], 'Sitting'],
    [[['sitting', 'supine']], 'Sitting or supine'],
    [[['supine'], ['standing']], 'Supine, then standing'],
    [[['supine'], ['sitting', 'standing']], 'Supine, then sitting or standing'],
    [[['any']], 'Any position'],
    [[['standing', 'supine', 'sitting']], 'Any position'],
  ])('%j is "%s"', (stages, words) => {
    expect(stagesText(positions, stages)).toBe(words);
  });

  it('refuse an unknown id', () => {
    expect(() => stagesText(positions, [['kneeling']])).toThrow(RangeError);
    expect(() => labelOf(positions, '')).toThrow(RangeError);
  });
});

describe('times', () => {
  it.each([
    [0, '0\u202fs'],
    [50, '50\u202fs'],
    [60, '1\u202fmin'],
    [75, '1\u202fmin 15\u202fs'],
    [3600, '60\u202fmin'],
  ])('%d seconds are "%s"', (seconds, words) => {
    expect(durationText(seconds)).toBe(words);
  });
});

describe('words', () => {
  it.each<[string[], string]>([
    [[], ''],
    [['a'], 'a'],
    [['a', 'b'], 'a and b'],
    [['a', 'b', 'c'], 'a, b and c'],
  ])('%j are joined as "%s"', (words, text) => {
    expect(joined(words, 'and')).toBe(text);
  });

  it('keep an abbreviation in capitals inside a sentence', () => {
    expect(midSentence('Pen light')).toBe('pen light');
    expect(midSentence('JVP')).toBe('JVP');
    expect(midSentence('10 g monofilament')).toBe('10 g monofilament');
  });

  it('name every side', () => {
    expect((['none', 'both', 'left', 'right'] as const).map(sidesText)).toEqual(['None', 'Both', 'Left', 'Right']);
  });
});
