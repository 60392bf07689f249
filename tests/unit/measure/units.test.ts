import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  cmWaterToMmHg,
  fahrenheitToCelsius,
  inchesToCentimetres,
  mmHgToCmWater,
  poundsToKilograms,
} from '../../../src/measure/units.ts';

const anyNumber = fc.double({ min: -1000, max: 1000, noNaN: true });

describe('conversions', () => {
  it('between columns of water and mercury undo each other', () => {
    fc.assert(
      fc.property(anyNumber, (cm) => {
        expect(mmHgToCmWater(cmWaterToMmHg(cm))).toBeCloseTo(cm, 9);
      }),
    );
  });

  it.each([
    ['length', inchesToCentimetres],
    ['mass', poundsToKilograms],
    ['pressure', cmWaterToMmHg],
  ])('of %s keep proportion and zero', (_, convert) => {
    expect(convert(0)).toBe(0);
    fc.assert(
      fc.property(anyNumber, (x) => {
        expect(convert(2 * x)).toBeCloseTo(2 * convert(x), 9);
      }),
    );
  });

  it.each([
    [32, 0],
    [212, 100],
    [-40, -40],
  ])('put %d °F at %d °C', (fahrenheit, celsius) => {
    expect(fahrenheitToCelsius(fahrenheit)).toBe(celsius);
  });
});
