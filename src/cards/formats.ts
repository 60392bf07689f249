/** A card's own size: A6 (105 × 148 mm) or an index card (3 × 5 in). */
export type CardFormat = 'a6' | 'index';

/** What can be printed: cards one face a page, or four to a sheet of A4 (A6 cards) or US Letter (index cards). */
export type CardSize = CardFormat | 'a4' | 'letter';

/** Every size, with its name for people. */
export const cardSizes: Readonly<Record<CardSize, string>> = {
  a6: 'A6, one face a page',
  index: '3 × 5 in, one face a page',
  a4: 'A4, four A6 cards a sheet',
  letter: 'US Letter, four 3 × 5 in cards a sheet',
};

/** The format of the cards on each size of paper. */
export const formatOf: Readonly<Record<CardSize, CardFormat>> = { a6: 'a6', index: 'index', a4: 'a6', letter: 'index' };

/** Widths of the cut to try, in per cent: the smaller card has the condensed one as its last resort. */
export const cutsOf: Readonly<Record<CardFormat, readonly number[]>> = { a6: [100], index: [100, 75] };
