/** Front or back of a card. */
export type Face = 'front' | 'back';

/** One side of a sheet: four places row by row, each the index of a card or nothing. */
export interface Sheet {
  face: Face;
  slots: (number | null)[];
  /** What the sheet says outside the cards, where there is room. */
  note: string;
}

const perSheet = 4;

/** Turned on the long edge of an upright sheet, left and right change places and rows stay. */
const mirrored = ([a, b, c, d]: (number | null)[]): (number | null)[] => [b ?? null, a ?? null, d ?? null, c ?? null];

const noteOf = (face: Face, first: number, last: number): string => {
  const cards = first === last ? `card ${first}` : `cards ${first}–${last}`;
  return face === 'front'
    ? `Fronts of ${cards}. Print at 100%, both sides, turned on the long edge; cut along the marks.`
    : `Backs of ${cards}.`;
};

/** Shares `count` cards over sheets of four: a sheet of fronts, then the sheet of their backs, each back behind its front. */
export function imposeSheets(count: number): Sheet[] {
  const starts = Array.from({ length: Math.ceil(count / perSheet) }, (_, sheet) => sheet * perSheet);
  return starts.flatMap((start) => {
    const fronts = Array.from({ length: perSheet }, (_, slot) => (start + slot < count ? start + slot : null));
    const last = Math.min(start + perSheet, count);
    return [
      { face: 'front', slots: fronts, note: noteOf('front', start + 1, last) },
      { face: 'back', slots: mirrored(fronts), note: noteOf('back', start + 1, last) },
    ] satisfies Sheet[];
  });
}
