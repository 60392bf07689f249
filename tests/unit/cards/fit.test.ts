import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitCard, mayGo, type Measured } from '../../../src/cards/fit.ts';
import type { PartName } from '../../../src/cards/parts.ts';

const names: PartName[] = ['flags', 'cautions', 'steps', 'say', 'normal', 'abnormal', 'errors', 'record'];
const ladder = [7.5, 8, 8.5, 9, 9.5];

/** Parts as so many lines at any size, on faces of 100 points behind openings of 10. */
const measured = (lines: number[]): Measured => ({
  id: 'card',
  room: [100, 100],
  steps: ladder.map((size) => ({
    size,
    line: size,
    stretch: 100,
    openings: [10, 10],
    parts: lines.map((n) => n * size),
  })),
});

const fit = (lines: number[], of: PartName[] = names) => {
  const result = fitCard(measured(lines), of);
  if ('excess' in result) throw new Error(`over by ${result.excess}`);
  return result;
};

describe('fitCard', () => {
  test('sets a short card at the largest size, hands in front and findings behind', () => {
    expect(fit([1, 1, 1, 1, 1, 1, 1, 1])).toEqual({
      size: 9.5,
      line: 9.5,
      stretch: 100,
      front: ['flags', 'cautions', 'steps', 'say'],
      back: ['normal', 'abnormal', 'errors', 'record'],
      leftOut: [],
    });
  });

  test('steps the size down until both faces hold', () => {
    expect(fit([4, 2, 2, 2, 2, 2, 2, 2]).size).toBe(9);
  });

  test('turns what to say over rather than set the card below a comfortable size', () => {
    const { size, front, back } = fit([5, 2, 2, 3, 1, 1, 1, 1]);
    expect(size).toBe(9.5);
    expect(front).toEqual(['flags', 'cautions', 'steps']);
    expect(back[0]).toBe('say');
  });

  test('leaves out common errors whole, then the fields, and only when the floor does not hold them', () => {
    expect(fit([3, 3, 3, 3, 4, 4, 3, 1]).leftOut).toEqual([]);
    expect(fit([3, 3, 3, 3, 5, 5, 3, 1]).leftOut).toEqual(['errors']);
    expect(fit([3, 3, 3, 3, 5, 6, 3, 3]).leftOut).toEqual(['errors', 'record']);
  });

  test('tells by how much a card fails when nothing more may go', () => {
    // Best shared as flags to steps (12 lines) and say to abnormal (12 lines), 10 + 90 points, at 7.5: exactly full; one line more is over.
    expect(fitCard(measured([4, 4, 4, 4, 4, 5, 1, 1]), names)).toEqual({ excess: 7.5 });
  });

  test('gives what to say the back of a card without findings', () => {
    expect(fit([1, 1, 1, 1], ['flags', 'cautions', 'steps', 'say']).back).toEqual(['say']);
  });

  test('never leaves out safety, never sets a part twice, and lets neither face run over', () => {
    const lines = fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 8, maxLength: 8 });
    fc.assert(
      fc.property(lines, (heights) => {
        const result = fitCard(measured(heights), names);
        if ('excess' in result) {
          expect(result.excess).toBeGreaterThan(0);
          return;
        }
        const { size, front, back, leftOut } = result;
        expect([...front, ...back, ...leftOut].sort()).toEqual([...names].sort());
        expect(leftOut.every((name) => mayGo.includes(name))).toBe(true);
        expect(front[0]).toBe('flags');
        const read = [...front, ...back];
        expect(read.indexOf('cautions')).toBe(1);
        for (const face of [front, back]) {
          const height = face.reduce((sum, name) => sum + (heights[names.indexOf(name)] ?? 0) * size, 10);
          expect(height).toBeLessThanOrEqual(100.01);
        }
      }),
    );
  });
});
