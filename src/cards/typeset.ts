import { markBox, markedPositions, markWeight, positionMark } from '../figures/position-mark.ts';
import type { References } from '../text/references.ts';
import type { Card } from './card.ts';
import type { Fit } from './fit.ts';
import { partsOf, type Part, type PartName } from './parts.ts';

/** A card as the templates take it, before it is fitted: plain data and inline runs, nothing evaluated. */
export interface TypesetCard extends Pick<
  Card,
  'id' | 'title' | 'set' | 'number' | 'count' | 'strip' | 'edition' | 'review'
> {
  parts: Part[];
  /** Slot of the thumb index and white drawing of each position. */
  marks: { slot: number; svg: string }[];
  /** How many slots the thumb index has. */
  slots: number;
}

/** A card with its size and the parts of each face. */
export interface FittedCard extends TypesetCard {
  fit: Pick<Fit, 'size' | 'line' | 'stretch'>;
  front: Part[];
  back: Part[];
}

/** A position mark in white, to stand on the black of the thumb index. Decorative: the strip names the position. */
const whiteMark = (position: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${markBox} ${markBox}">` +
  `<path d="${positionMark(position).d.join('')}" fill="none" stroke="#fff" stroke-width="${markWeight}" stroke-linecap="round" stroke-linejoin="round"/></svg>`;

/** Turns a card into template data. Throws RangeError for a position without a mark. */
export function typesetCard(card: Card, references: References): TypesetCard {
  const { id, title, set, number, count, strip, edition, review } = card;
  const marks = card.marks.map((position) => ({ slot: markedPositions.indexOf(position), svg: whiteMark(position) }));
  return {
    id,
    title,
    set,
    number,
    count,
    strip,
    edition,
    review,
    parts: partsOf(card, references),
    marks,
    slots: markedPositions.length,
  };
}

/** Shares the parts of a card over its faces as its fit says. */
export function applyFit(card: TypesetCard, { size, line, stretch, front, back }: Fit): FittedCard {
  const pick = (names: readonly PartName[]) => card.parts.filter(({ name }) => names.includes(name));
  return { ...card, fit: { size, line, stretch }, front: pick(front), back: pick(back) };
}
