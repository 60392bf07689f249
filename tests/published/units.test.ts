/**
 * Sources of the figures: UCUM Organization, The Unified Code for Units of Measure, ucum-essence.xml v2.2 (2024-06-17);
 * MedlinePlus (US National Library of Medicine), encyclopedia 002341, "Vital signs", review of 2021-01-16.
 */
import { describe, expect, it } from 'vitest';
import {
  centimetresPerInch,
  cmWaterToMmHg,
  fahrenheitToCelsius,
  inchesPerFoot,
  inchesToCentimetres,
  kilogramsPerPound,
  kilopascalsPerCmWater,
  poundsToKilograms,
} from '../../src/measure/units.ts';

/** What is computed here; what the source gives; digits after the point that it gives; the source. */
const published: [string, number, number, number, string][] = [
  ['one metre of water in kPa', 100 * kilopascalsPerCmWater, 9.80665, 5, 'UCUM v2.2, m[H2O]'],
  ['one cmH2O in mmHg', cmWaterToMmHg(1), 0.7356, 4, 'UCUM v2.2, m[H2O] = 9.80665 kPa over m[Hg] = 133.3220 kPa'],
  ['one inch in cm', centimetresPerInch, 2.54, 2, 'UCUM v2.2, [in_i]'],
  ['one foot in inches', inchesPerFoot, 12, 0, 'UCUM v2.2, [ft_i]'],
  ['one foot in cm', inchesToCentimetres(12), 30.48, 2, 'UCUM v2.2, [ft_i] and [in_i]'],
  ['one pound in kg', kilogramsPerPound, 0.45359237, 8, 'UCUM v2.2, [lb_av] = 7000 [gr] of 64.79891 mg'],
  ['ten pounds in kg', poundsToKilograms(10), 4.5359237, 7, 'UCUM v2.2, [lb_av]'],
  ['98.6 °F in °C', fahrenheitToCelsius(98.6), 37, 1, 'MedlinePlus 002341, "98.6 F (37 C)"'],
  ['99.1 °F in °C', fahrenheitToCelsius(99.1), 37.3, 1, 'MedlinePlus 002341, "99.1 F (37.3 C)"'],
];

describe('published conversions', () => {
  it.each(published)('%s: %d is %d, to %d digits (%s)', (_, computed, expected, digits) => {
    expect(computed).toBeCloseTo(expected, digits);
  });

  it('rounds 97.8 °F up, where MedlinePlus 002341 prints it cut to 36.5 °C', () => {
    expect(fahrenheitToCelsius(97.8)).toBeCloseTo(36.56, 2);
    expect(Math.floor(fahrenheitToCelsius(97.8) * 10) / 10).toBe(36.5);
  });
});
