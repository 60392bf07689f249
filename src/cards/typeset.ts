import { markBox, markedPositions, markWeight, positionMark } from '../figures/position-mark.ts';
import type { References } from '../text/references.ts';
import { setQuotes } from '../text/set-runs.ts';
import type { Card } from './card.ts';
import type { Fit } from './fit.ts';
import { partsOf, type Part, type PartName } from './parts.ts';

/** A card as the templates take it, before it is fitted: plain data and inline runs, nothing evaluated. */
export interface TypesetCard extends Pick<
  Card,
  'id' | 'title' | 'set' | 'number' | 'count' | 'strip' | 'owner' | 'edition' | 'review'
> {
  parts: Part[];
  /** Slot of the thumb index and drawing of each position; the first is filled, the others outlined. */
  marks: { slot: number; filled: boolean; svg: string }[];
  /** How many slots the thumb index has. */
  slots: number;
}

/** A card with its size and the parts of each face. */
export interface FittedCard extends TypesetCard {
  fit: Pick<Fit, 'size' | 'line' | 'stretch'>;
  front: Part[];
  back: Part[];
}

/** A position mark as SVG, white on a filled tab. Decorative: the strip names the position. */
const markSvg = (position: string, filled: boolean): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${markBox} ${markBox}">` +
  `<path d="${positionMark(position).d.join('')}" fill="none" stroke="${filled ? '#fff' : '#000'}" stroke-width="${markWeight}" stroke-linecap="round" stroke-linejoin="round"/></svg>`;

const tab = (position: string, place: number): TypesetCard['marks'][number] => ({
  slot: markedPositions.indexOf(position),
  filled: place === 0,
  svg: markSvg(position, place === 0),
});

/** Turns a card into template data. Throws RangeError for a position without a mark. */
export function typesetCard(card: Card, references: References): TypesetCard {
  const { id, set, number, count, owner, edition, review } = card;
  return {
    ...{ id, set, number, count, edition, review },
    ...(owner !== undefined && { owner }),
    title: setQuotes(card.title),
    strip: card.strip.map(({ label, text }) => ({ label, text: setQuotes(text) })),
    parts: partsOf(card, references),
    marks: card.marks.map(tab),
    slots: markedPositions.length,
  };
}

/** Shares the parts of a card over its faces as its fit says. */
export function applyFit(card: TypesetCard, { size, line, stretch, front, back }: Fit): FittedCard {
  const pick = (names: readonly PartName[]) => card.parts.filter(({ name }) => names.includes(name));
  return { ...card, fit: { size, line, stretch }, front: pick(front), back: pick(back) };
}
