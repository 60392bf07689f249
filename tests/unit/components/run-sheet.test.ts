import { describe, expect, it } from 'vitest';
import { exposedWords, labelsText, minutesText, sheetOf, stepAnchor } from '../../../src/components/run-sheet.ts';
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
