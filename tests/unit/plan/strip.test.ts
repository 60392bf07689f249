import { describe, expect, it } from 'vitest';
import { planRequest } from '../../../src/plan/plan.ts';
import { minuteMarks, stripOf } from '../../../src/plan/strip.ts';
import { libraryOf, type Sketch } from './small-library.ts';

const sketches: Sketch[] = [
  { id: 'neck', exposure: ['neck'], stages: [['sitting']] },
  { id: 'veins', exposure: ['neck', 'upper-sternum'], stages: [['supine']], after: ['neck'] },
  { id: 'belly', exposure: ['none'], stages: [['supine']], after: ['veins'] },
  { id: 'neck-again', exposure: ['neck'], stages: [['sitting']], after: ['belly'] },
];

const strip = stripOf(planRequest(libraryOf(sketches), { manoeuvres: sketches.map(({ id }) => id) }));

describe('the strip along time', () => {
  it('shows when the patient is in each position, the changes left open', () => {
    expect(strip.positions).toEqual([
      {
        id: 'sitting',
        spans: [
          { start: 0, end: 30 },
          { start: 120, end: 150 },
        ],
      },
      { id: 'supine', spans: [{ start: 45, end: 105 }] },
    ]);
    expect(strip.end).toBe(150);
  });

  it('shows when each region is bare, without a gap where it stays so', () => {
    expect(strip.regions).toEqual([
      {
        id: 'neck',
        spans: [
          { start: 0, end: 75 },
          { start: 120, end: 150 },
        ],
      },
      { id: 'upper-sternum', spans: [{ start: 45, end: 75 }] },
    ]);
  });

  it('is marked at round minutes, eight times at most', () => {
    expect(minuteMarks(150)).toEqual([0, 1, 2]);
    expect(minuteMarks(1266)).toEqual([0, 5, 10, 15, 20]);
    expect(minuteMarks(2400)).toEqual([0, 5, 10, 15, 20, 25, 30, 35, 40]);
    expect(minuteMarks(0)).toEqual([0]);
  });
});
