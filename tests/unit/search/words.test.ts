import { describe, expect, it, test } from 'vitest';
import { answersTo, everyWordOf, mayAnswerTo, wordsOf } from '../../../src/search/words.ts';

describe('words of a text', () => {
  it('are in small letters, without apostrophes, parted by hyphens', () => {
    expect(everyWordOf('Kernig’s sign, hepato-jugular (30–45°)')).toEqual([
      'kernigs',
      'sign',
      'hepato',
      'jugular',
      '30',
      '45',
    ]);
  });

  it('may be none', () => {
    expect(everyWordOf(' – ?')).toEqual([]);
  });

  it('are each given once where they should differ', () => {
    expect(wordsOf('pulse, Pulse and thrill')).toEqual(['pulse', 'and', 'thrill']);
  });
});

describe('a typed word', () => {
  test.each([
    ['spl', 'spleen'],
    ['jvp', 'jvp'],
    ['palpating', 'palpation'],
    ['listening', 'listen'],
    ['measurement', 'measure'],
    ['identity', 'identification'],
    ['glands', 'gland'],
    ['veins', 'vein'],
    ['reading', 'read'],
  ])('"%s" is answered by "%s"', (typed, word) => {
    expect(answersTo(typed, word)).toBe(true);
  });

  test.each([
    ['spelen', 'spleen'],
    ['spelen', 's'],
    ['splene', 'splenic'],
    ['jpv', 'jvp'],
    ['liver', 'live'],
    ['station', 'state'],
  ])('"%s" is not answered by "%s"', (typed, word) => {
    expect(answersTo(typed, word)).toBe(false);
  });

  test.each([
    ['palpate', 'palpation', true],
    ['auscultate', 'auscultation', true],
    ['jvp', 'jvp', true],
    ['spelen', 'spleen', false],
    ['rome', 'romberg', false],
  ])('"%s" may be given for "%s": %s', (typed, word, may) => {
    expect(mayAnswerTo(typed, word)).toBe(may);
  });
});
