/** Limits, ranges and figures of the library against the sources that published them, each named beside its row. */
import { describe, expect, it } from 'vitest';
import type { Value } from '../../schemas/value.ts';
import { requireLibrary } from '../../src/library/load.ts';
import { publishedValues, type Figure } from './published-values.ts';

const library = requireLibrary('content');

function required(id: string): Value {
  const found = library.values.find((one) => one.id === id);
  if (found === undefined) throw new Error(`The library has no value "${id}".`);
  return found;
}

/** The figure that the library gives, in the shape of the table. */
function figureOf(value: Value): Figure {
  switch (value.kind) {
    case 'limit':
      return { normal: value.normal, limit: value.value };
    case 'range':
      return { low: value.low, high: value.high };
    case 'number':
      return { number: value.value };
    case 'series':
      return { points: value.points.map(({ at, value: point }) => [at, point]) };
  }
}

describe('values of the library', () => {
  it('are checked against their sources for at least 40 values, none twice', () => {
    const ids = publishedValues.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.length).toBeGreaterThanOrEqual(40);
  });

  it.each(publishedValues)('$id is as published in $source', ({ id, unit, figure }) => {
    const value = required(id);
    expect(value.unit).toBe(unit);
    if (figure !== undefined) expect(figureOf(value)).toEqual(figure);
  });

  it.each(publishedValues.filter(({ beside }) => beside !== undefined))(
    '$id shows the other figure of $beside.source',
    ({ id, beside }) => {
      expect(required(id).others.map(({ value }) => value)).toContainEqual(beside?.figure);
    },
  );
});

describe('figures that follow from one another', () => {
  const limit = (id: string): number => {
    const value = required(id);
    return value.kind === 'limit' ? value.value : NaN;
  };

  // US 38 CFR 4.71a, note 2: normal combined range of the cervical spine 340°, of the thoracolumbar spine 240°.
  it('give the combined range of the neck, 340°, and of the back, 240°', () => {
    const sum = (part: 'neck' | 'trunk'): number =>
      limit(`${part}-flexion-full`) +
      limit(`${part}-extension-full`) +
      2 * limit(`${part}-side-bending-full`) +
      2 * limit(`${part}-rotation-full`);
    expect(sum('neck')).toBe(340);
    expect(sum('trunk')).toBe(240);
  });

  // LogMAR is by definition the decimal logarithm of the denominator over the numerator of a chart line.
  it('give each chart line the logMAR of its fraction, to one decimal, in metres and in feet', () => {
    const value = required('acuity-logmar');
    const points = value.kind === 'series' ? value.points : [];
    expect(points.length).toBeGreaterThan(5);
    for (const { at, value: logMar } of points) {
      const fractions = [...at.matchAll(/(\d+)\/([\d.]+)/g)];
      expect(fractions).toHaveLength(2);
      for (const [, numerator, denominator] of fractions) {
        expect(Math.abs(Math.log10(Number(denominator) / Number(numerator)) - logMar), at).toBeLessThan(0.05);
      }
    }
  });

  // McIntyre OR, Ebaugh FG. Ann Intern Med 1979;90:130–1: 63 of 2200 entering students.
  it('give the share of students with a palpable spleen, 63 of 2200', () => {
    const value = required('spleen-felt-in-health');
    expect(value.kind === 'number' ? value.value : NaN).toBeCloseTo((100 * 63) / 2200, 1);
  });

  // Gerhard-Herman MD and others, 2016 AHA/ACC guideline: 0.90, 0.91 to 0.99, 1.00 to 1.40 and above 1.40.
  it('leave no gap between the classes of the ankle–brachial index', () => {
    const [borderline, normal] = ['abi-borderline', 'abi-normal'].map(required);
    const low = (value: Value | undefined): number => (value?.kind === 'range' ? value.low : NaN);
    const high = (value: Value | undefined): number => (value?.kind === 'range' ? value.high : NaN);
    expect(low(borderline)).toBeCloseTo(limit('abi-abnormal') + 0.01, 5);
    expect(low(normal)).toBeCloseTo(high(borderline) + 0.01, 5);
    expect(high(normal)).toBe(limit('abi-stiff'));
  });
});
