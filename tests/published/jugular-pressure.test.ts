/**
 * Source of the distances: Seth R, Magner P, Matzinger F, van Walraven C. How far is the sternal angle from the
 * mid-right atrium? J Gen Intern Med 2002;17(11):861–865, abstract: 160 patients; taught as 5 cm; median supine
 * 5.4 cm; 8 cm at 30° and 9.7 cm at 45° by geometry.
 */
import { describe, expect, it } from 'vitest';
import { requireLibrary } from '../../src/library/load.ts';
import { estimatePressure, measuredOffsets, taughtOffset } from '../../src/measure/jugular-pressure.ts';

const library = requireLibrary('content');

describe('distance from the sternal angle to the right atrium (Seth 2002, abstract)', () => {
  it('is measured as 5.4, 8 and 9.7 cm', () => {
    expect(measuredOffsets(library)).toEqual([
      { at: 'supine', cm: 5.4 },
      { at: 'at 30°', cm: 8 },
      { at: 'at 45°', cm: 9.7 },
    ]);
  });

  it('is taught as 5 cm', () => {
    expect(taughtOffset(library).cm).toBe(5);
  });
});

describe('worked examples', () => {
  /** Height in cm; distance in cm; total in cmH2O; total in mmHg, by UCUM v2.2, 0.7356 mmHg in one cmH2O. */
  const examples: [number, number, number, number, string][] = [
    [3, 5, 8, 5.88, 'upper limit of McGee 1998 (3 cm) with the taught distance: the 8 cmH2O of that review'],
    [3, 5.4, 8.4, 6.18, 'the same height with the median supine of Seth 2002'],
    [3, 8, 11, 8.09, 'the same height at 30° (Seth 2002)'],
    [3, 9.7, 12.7, 9.34, 'the same height at 45° (Seth 2002)'],
    [-2, 5.4, 3.4, 2.5, 'below the sternal angle'],
  ];

  it.each(examples)(
    '%d cm above the angle and %d cm below it is %d cmH2O, %d mmHg (%s)',
    (height, offset, cm, mmHg) => {
      const estimate = estimatePressure(height, offset);
      expect(estimate.cmWater).toBeCloseTo(cm, 10);
      expect(estimate.mmHg).toBeCloseTo(mmHg, 2);
    },
  );
});
