import { describe, expect, it } from 'vitest';
import {
  countWords,
  exposedWords,
  labelsText,
  minutesText,
  proofText,
  sheetOf,
  stepAnchor,
} from '../../../src/components/run-sheet.ts';
import { fixtureLibrary } from '../../fixtures/library.ts';
import { present } from '../../fixtures/present.ts';

describe('the sheet of an examination', () => {
  const sheet = sheetOf(fixtureLibrary, present(fixtureLibrary.forms[0]));

  it('holds all of it, in blocks, beside the orders that it is compared with', () => {
    expect(sheet.plan.leftOut).toEqual([]);
    expect(sheet.blocks.flatMap(({ steps }) => steps)).toHaveLength(sheet.plan.steps.length);
    const { headToToe, systemBySystem } = sheet.others;
    for (const other of [headToToe, systemBySystem])
      expect(other.positionSeconds).toBeGreaterThanOrEqual(sheet.plan.totals.positionSeconds);
    expect(sheet.plan.steps.at(-1)?.manoeuvre).toBe('finish-and-explain');
  });
});

describe('the words of a run sheet', () => {
  it('count things', () => {
    expect([0, 1, 2].map((count) => countWords(count, 'change'))).toEqual(['no change', '1 change', '2 changes']);
  });

  it('give times to the minute, short ones in seconds', () => {
    expect([40, 59.6, 60, 89, 90, 1266].map(minutesText)).toEqual([
      '40\u202fs',
      '1\u202fmin',
      '1 minute',
      '1 minute',
      '2 minutes',
      '21 minutes',
    ]);
  });

  it('claim the least only where it is proven', () => {
    const { totals } = sheetOf(fixtureLibrary, present(fixtureLibrary.forms[0])).plan;
    const counted = { ...totals, exposureChanges: 2, examinerMoves: 1 };
    const bound = { positionSeconds: 75 };
    const proven = { positionSeconds: true, exposureChanges: true, examinerMoves: true, kept: true };
    expect(proofText({ optimal: proven, bound, totals: counted })).toBe(
      'No order that keeps what must come first moves the patient for less. What is uncovered changes 2 times, the least on this way; the examiner moves 1 time, the least on this way. Nothing that is left out would fit in the time beside what matters more.',
    );
    expect(proofText({ optimal: { positionSeconds: false, kept: false }, bound, totals: counted })).toBe(
      'The best order found in the time allowed; none takes less than 1\u202fmin 15\u202fs of moving. What is uncovered changes 2 times, the least found; the examiner moves 1 time, the least found. More might fit in the time: this is the best that was found.',
    );
  });

  it('name several things in a sentence', () => {
    const entries = [
      { id: 'neck', label: 'Neck' },
      { id: 'arms', label: 'Arms' },
      { id: 'legs', label: 'Legs' },
    ];
    expect(labelsText(entries, ['neck'])).toBe('neck');
    expect(labelsText(entries, ['neck', 'arms', 'legs'])).toBe('neck, arms and legs');
    expect(() => labelsText(entries, ['tail'])).toThrow(RangeError);
    expect(exposedWords(fixtureLibrary, ['hands'])).toBe('hands');
  });

  it('anchor each step', () => {
    expect(stepAnchor('adult-screening', 7)).toBe('adult-screening-step-7');
  });
});
