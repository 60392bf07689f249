/**
 * Sources: LOINC Users' Guide, "Calculating Mod 10 Check Digits" (last updated 2023-08-16): the algorithm, its worked
 * example and the codes that are known to have a wrong digit; LOINC forum, "LOINC Code and Mod 10 Check Digit Mismatch"
 * (LOINC 2.75): the digit that the algorithm gives for those; HL7 FHIR R4 (4.0.1), "Vital signs": codes in common use.
 */
import { describe, expect, it } from 'vitest';
import { isLoincCode, loincCheckDigit } from '../../src/forms/loinc.ts';

describe('the check digit of a LOINC code', () => {
  it('is 5 for 12345, as in the worked example', () => {
    expect(loincCheckDigit('12345')).toBe(5);
  });

  it.each(['9279-1', '8867-4', '2708-6', '8310-5', '8302-2', '29463-7', '39156-5', '85354-9', '8480-6', '8462-4'])(
    'is right in %s, of the vital-signs profiles of FHIR R4',
    (code) => {
      expect(isLoincCode(code)).toBe(true);
    },
  );

  it.each([
    ['11491-6', 8],
    ['11501-6', 4],
    ['5895-7', 8],
    ['5896-5', 6],
    ['5897-3', 4],
    ['5928-1', 7],
    ['6028-3', 5],
    ['6415-5', 4],
    ['6580-7', 5],
    ['6645-7', 6],
    ['6646-5', 4],
    ['6647-3', 2],
    ['6648-1', 0],
    ['6649-9', 8],
  ])('is known to be wrong in %s, and computes to %d', (code, computed) => {
    expect(loincCheckDigit(code.slice(0, -2))).toBe(computed);
    expect(isLoincCode(code)).toBe(false);
  });

  it.each(['8867', '8867-44', 'LP12345-5', '', '-4'])('is not found in %j', (code) => {
    expect(isLoincCode(code)).toBe(false);
  });
});
