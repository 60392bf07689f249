/**
 * Sources of the figures: UCUM Organization, The Unified Code for Units of Measure, ucum-essence.xml v2.2 (2024-06-17);
 * MedlinePlus (US National Library of Medicine), encyclopedia 002341, "Vital signs", review of 2021-01-16.
 */
import { UcumLhcUtils } from '@lhncbc/ucum-lhc';
import { describe, expect, it } from 'vitest';
import { buildForm } from '../../src/forms/form.ts';
import { ucumFault } from '../../src/forms/ucum.ts';
import { requireLibrary } from '../../src/library/load.ts';

const ucum = UcumLhcUtils.getInstance();
const library = requireLibrary('content');

/** A number of one unit in another; fails the test when the units do not convert. */
function converted(value: number, from: string, to: string): number {
  const { status, toVal } = ucum.convertUnitTo(from, value, to);
  expect(status).toBe('succeeded');
  return Number(toVal);
}

/** from, in UCUM; what it equals, in UCUM; digits after the point that the source gives; source. */
const published: [number, string, number, string, number, string][] = [
  [1, 'm[H2O]', 9.80665, 'kPa', 5, 'ucum-essence v2.2, m[H2O]'],
  [1, 'cm[H2O]', 0.7356, 'mm[Hg]', 4, 'ucum-essence v2.2, quotient of m[H2O] = 9.80665 kPa and m[Hg] = 133.3220 kPa'],
  [1, '[in_i]', 2.54, 'cm', 2, 'ucum-essence v2.2, [in_i]'],
  [1, '[ft_i]', 12, '[in_i]', 6, 'ucum-essence v2.2, [ft_i]'],
  [1, '[lb_av]', 0.45359237, 'kg', 8, 'ucum-essence v2.2, [lb_av] = 7000 [gr], [gr] = 64.79891 mg'],
  [98.6, '[degF]', 37, 'Cel', 1, 'MedlinePlus 002341'],
  [99.1, '[degF]', 37.3, 'Cel', 1, 'MedlinePlus 002341'],
];

describe('published conversions', () => {
  it.each(published)('%d %s is %d %s, to %d digits (%s)', (value, from, expected, to, digits) => {
    expect(converted(value, from, to)).toBeCloseTo(expected, digits);
  });
});

describe('units', () => {
  const fields = library.forms.flatMap(({ id }) =>
    buildForm(library, id).sections.flatMap(({ items }) => items.flatMap((item) => item.fields)),
  );
  const used = fields.flatMap((field) => (field.kind === 'quantity' ? field.unit : []));

  it.each([...new Set([...used, ...library.values.map(({ unit }) => unit)])])(
    '%s, used in forms or values, is UCUM',
    (unit) => {
      expect(ucumFault(unit)).toEqual([]);
    },
  );

  it.each(['mmHg', 'degrees', 'cmH2O', 'bpm', '°C', ''])('%j, which people write, is not', (unit) => {
    expect(ucumFault(unit)).toEqual([`found the unit "${unit}", expected a valid UCUM code`]);
  });
});
