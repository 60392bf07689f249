import { describe, expect, it } from 'vitest';
import { comparedWords, countWords, proofText } from '../../../src/sheets/proof-words.ts';

const totals = { seconds: 1500, positionChanges: 3, positionSeconds: 35, exposureChanges: 10, examinerMoves: 1 };
const bound = { positionSeconds: 75 };

describe('the words for what is proven', () => {
  it('count things', () => {
    expect([0, 1, 2].map((count) => countWords(count, 'change'))).toEqual(['no change', '1 change', '2 changes']);
  });

  it('claim the least only where it is proven', () => {
    const proven = { positionSeconds: true, exposureChanges: true, examinerMoves: true, kept: true };
    expect(proofText({ optimal: proven, bound, totals })).toBe(
      'Proven: no order that keeps what must come first spends less time moving the patient. On this way what is uncovered changes 10 times (proven least) and the examiner moves once (proven least). Nothing that is left out would fit in the time beside what matters more.',
    );
    expect(proofText({ optimal: { positionSeconds: false, kept: false }, bound, totals })).toBe(
      'Not proven: the best order found in the time allowed; none can take less than 1\u202fmin 15\u202fs of moving. On this way what is uncovered changes 10 times (least found, not proven) and the examiner moves once (least found, not proven). More might fit in the time: this is the best that was found.',
    );
  });

  it('say never for none', () => {
    const still = { ...totals, exposureChanges: 0, examinerMoves: 0 };
    expect(proofText({ optimal: { positionSeconds: true }, bound, totals: still })).toMatch(
      /what is uncovered changes never .* the examiner moves never /,
    );
  });

  it('compare with the other orders', () => {
    const other = { ...totals, positionChanges: 1, positionSeconds: 66, seconds: 1560 };
    expect(comparedWords(totals, other)).toBe(
      'The same steps head to toe: 3 changes, 35\u202fs of moving, 25 minutes in all; system by system: 1 change, 1\u202fmin 6\u202fs of moving, 26 minutes in all.',
    );
  });
});
