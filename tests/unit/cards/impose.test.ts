import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { imposeSheets } from '../../../src/cards/impose.ts';

/** Where the back of a slot comes to lie when an upright sheet is turned on its long edge: columns change, rows stay. */
const behind = (slot: number): number => (slot % 2 === 0 ? slot + 1 : slot - 1);

describe('imposeSheets', () => {
  test('puts each back behind its front, on the sheet that follows', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), (count) => {
        const sheets = imposeSheets(count);
        expect(sheets).toHaveLength(2 * Math.ceil(count / 4));
        for (let pair = 0; pair < sheets.length; pair += 2) {
          const [fronts, backs] = [sheets[pair], sheets[pair + 1]];
          expect([fronts?.face, backs?.face]).toEqual(['front', 'back']);
          fronts?.slots.forEach((card, slot) => expect(backs?.slots[behind(slot)]).toBe(card));
        }
      }),
    );
  });

  test('prints every card once, in order', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), (count) => {
        const fronts = imposeSheets(count).filter(({ face }) => face === 'front');
        const printed = fronts.flatMap(({ slots }) => slots).filter((slot) => slot !== null);
        expect(printed).toEqual(Array.from({ length: count }, (_, card) => card));
      }),
    );
  });

  test('says on the fronts how to turn the sheet', () => {
    expect(imposeSheets(5).map(({ note }) => note)).toEqual([
      'Fronts of cards 1–4. Print at 100%, both sides, turned on the long edge; cut along the marks.',
      'Backs of cards 1–4.',
      'Fronts of card 5. Print at 100%, both sides, turned on the long edge; cut along the marks.',
      'Backs of card 5.',
    ]);
  });
});
