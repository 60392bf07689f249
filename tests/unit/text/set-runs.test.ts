import { describe, expect, test } from 'vitest';
import type { Line } from '../../../schemas/inline.ts';
import { keepFigures, setQuotes, setRuns } from '../../../src/text/set-runs.ts';
import { fixtureLibrary } from '../../fixtures/library.ts';

describe('setQuotes', () => {
  test.each([
    ['write "in total" or ("above")', 'write “in total” or (“above”)'],
    ["the patient's 'yes'", 'the patient’s ‘yes’'],
    ['"Not felt" is not "normal".', '“Not felt” is not “normal”.'],
  ])('%s', (straight, set) => expect(setQuotes(straight)).toBe(set));
});

describe('keepFigures', () => {
  test.each([
    ['an aneurysm of 4 cm or more', 'an aneurysm of 4\u202fcm or more'],
    ['50 to 99 % (0.57–0.77)', '50 to 99\u202f% (0.57–\u20600.77)'],
    ['3 steps, 5 more, Dix–Hallpike', '3 steps, 5 more, Dix–Hallpike'],
  ])('%s', (written, set) => expect(keepFigures(written)).toBe(set));
});

test('a mark at the start of a run looks at the run before it', () => {
  const line: Line = [
    { type: 'text', text: 'say "' },
    { type: 'strong', children: [{ type: 'text', text: 'now' }] },
    { type: 'text', text: '" aloud' },
  ];
  expect(setRuns(line, fixtureLibrary)).toEqual([{ text: 'say “' }, { text: 'now', bold: true }, { text: '” aloud' }]);
});
