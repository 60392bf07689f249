import { describe, expect, it } from 'vitest';
import {
  comparisonText,
  countWords,
  exposedWords,
  labelsText,
  minutesText,
  proofText,
  sheetOf,
  stepAnchor,
  type Sheet,
} from '../../../src/components/run-sheet.ts';
import { fixtureLibrary } from '../../fixtures/library.ts';
import { present } from '../../fixtures/present.ts';

/** Two totals that differ only in how the patient is moved. */
function moved(
  plan: [changes: number, seconds: number],
  plain: [changes: number, seconds: number],
): Pick<Sheet, 'plan' | 'plain'> {
  const { plan: whole } = sheetOf(fixtureLibrary, present(fixtureLibrary.forms[0]));
  const totals = ([positionChanges, positionSeconds]: [number, number]): Sheet['plain'] => ({
    ...whole.totals,
    positionChanges,
    positionSeconds,
  });
  return { plan: { ...whole, totals: totals(plan) }, plain: totals(plain) };
}

describe('the sheet of an examination', () => {
  const sheet = sheetOf(fixtureLibrary, present(fixtureLibrary.forms[0]));

  it('holds all of it, in blocks, beside plain head-to-toe order', () => {
    expect(sheet.plan.leftOut).toEqual([]);
    expect(sheet.blocks.flatMap(({ steps }) => steps)).toHaveLength(sheet.plan.steps.length);
    expect(sheet.plain.positionSeconds).toBeGreaterThanOrEqual(sheet.plan.totals.positionSeconds);
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

  it('say what plain order would cost, and when nothing is gained', () => {
    expect(comparisonText(moved([2, 21], [5, 70]))).toBe(
      'Plain head-to-toe order would move the patient longer: 5 changes, 1\u202fmin 10\u202fs, so 49\u202fs more.',
    );
    expect(comparisonText(moved([1, 15], [1, 15]))).toBe(
      'Plain head-to-toe order would move the patient as long: 1 change, 15\u202fs.',
    );
    expect(comparisonText(moved([0, 0], [0, 0]))).toBe('Plain head-to-toe order would not move the patient either.');
  });

  it('claim the least only when it is proven', () => {
    expect(proofText({ optimal: { positionSeconds: true }, bound: { positionSeconds: 21 } })).toBe(
      'No order that keeps what must come first moves the patient for less.',
    );
    expect(proofText({ optimal: { positionSeconds: false }, bound: { positionSeconds: 75 } })).toBe(
      'The best order found in the time allowed; none takes less than 1\u202fmin 15\u202fs of moving.',
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
