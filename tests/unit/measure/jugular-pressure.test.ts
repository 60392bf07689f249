import { describe, expect, it } from 'vitest';
import type { Value } from '../../../schemas/value.ts';
import {
  estimatePressure,
  measuredOffsets,
  pressureTable,
  taughtOffset,
} from '../../../src/measure/jugular-pressure.ts';
import { fixtureLibrary } from '../../fixtures/library.ts';

const common = {
  label: 'Distance',
  unit: 'cm',
  appliesTo: 'adults',
  source: 'joint-book',
  where: 'Table 1',
  others: [],
};
const series: Value = {
  kind: 'series',
  id: 'sternal-angle-to-atrium',
  ...common,
  points: [
    { at: 'flat', value: 5 },
    { at: 'raised', value: 9 },
  ],
};
const taught: Value = { kind: 'number', id: 'sternal-angle-to-atrium-taught', ...common, value: 4 };

describe('an estimate', () => {
  it('adds the distance to the height and gives both units', () => {
    expect(estimatePressure(3, 5)).toEqual({ cmWater: 8, mmHg: expect.closeTo(5.88, 2) as number });
  });

  it.each([Number.NaN, Infinity])('refuses a height of %d', (height) => {
    expect(() => estimatePressure(height, 5)).toThrow(/the height is/);
  });

  it.each([0, -5, Number.NaN, Infinity])('refuses a distance of %d', (distance) => {
    expect(() => estimatePressure(3, distance)).toThrow(/expected centimetres above 0/);
  });
});

describe('distances', () => {
  it('come from the library', () => {
    expect(measuredOffsets({ values: [series] })).toEqual([
      { at: 'flat', cm: 5 },
      { at: 'raised', cm: 9 },
    ]);
    expect(taughtOffset({ values: [taught] })).toEqual({ at: 'as taught', cm: 4 });
  });

  it('are missed loudly', () => {
    expect(() => measuredOffsets(fixtureLibrary)).toThrow(/is not a series/);
    expect(() => taughtOffset(fixtureLibrary)).toThrow(/is not a number/);
    expect(() => measuredOffsets({ values: [{ ...taught, id: 'sternal-angle-to-atrium' }] })).toThrow(
      /is not a series/,
    );
  });
});

describe('the table', () => {
  const rows = pressureTable(-2, 3, measuredOffsets({ values: [series] }));

  it('has a line for every centimetre, both ends included', () => {
    expect(rows.map(({ height }) => height)).toEqual([-2, -1, 0, 1, 2, 3]);
  });

  it('rises down each column and along each line', () => {
    expect(rows.map(({ estimates }) => estimates.map(({ cmWater }) => cmWater))).toEqual(
      [-2, -1, 0, 1, 2, 3].map((height) => [height + 5, height + 9]),
    );
  });
});
