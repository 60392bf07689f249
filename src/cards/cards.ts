import type { Library } from '../../schemas/library.ts';
import { compilePdf, queryDocument } from '../pdf/engine.ts';
import type { Card } from './card.ts';
import { fitCard, mayGo, type Fit, type Measured } from './fit.ts';
import { imposeSheets } from './impose.ts';
import { orderCards } from './order.ts';
import { CardOverflow } from './overflow.ts';
import { selectCards } from './select.ts';
import { applyFit, typesetCard, type FittedCard } from './typeset.ts';

/** A card's own size: A6 (105 × 148 mm) or an index card (3 × 5 in). */
export type CardFormat = 'a6' | 'index';
/** What can be printed: cards one face a page, or four to a sheet of A4 (A6 cards) or Letter (index cards). */
export type CardSize = CardFormat | 'a4' | 'letter';

/** Every size there is, with its name for people. */
export const cardSizes: Readonly<Record<CardSize, string>> = {
  a6: 'A6, one face a page',
  index: '3 × 5 in, one face a page',
  a4: 'A4, four A6 cards a sheet',
  letter: 'US Letter, four 3 × 5 in cards a sheet',
};

/** How one card is set in one format. */
export type CardFit = Fit & { card: string };

const formatOf: Readonly<Record<CardSize, CardFormat>> = { a6: 'a6', index: 'index', a4: 'a6', letter: 'index' };

/** The cards of a set in page order. Throws RangeError for a set that is not there. */
export function cardsOf(library: Library, setId: string): Card[] {
  return orderCards(selectCards(library, setId), library);
}

interface FittedSet {
  title: string;
  cards: FittedCard[];
  fits: CardFit[];
}

/** One fit per set and format of a Library: decks and sheets share it. */
const fitted = new WeakMap<Library, Map<string, FittedSet>>();

function fittedSet(library: Library, setId: string, format: CardFormat): FittedSet {
  const sets = fitted.get(library) ?? new Map<string, FittedSet>();
  fitted.set(library, sets);
  const key = `${setId} ${format}`;
  const found = sets.get(key) ?? fitSet(library, setId, format);
  sets.set(key, found);
  return found;
}

function fitSet(library: Library, setId: string, format: CardFormat): FittedSet {
  const selection = selectCards(library, setId);
  const cards = orderCards(selection, library).map((card) => typesetCard(card, library));
  const measured = queryDocument(
    { template: 'card-measure.typ', data: { format, cards, mayGo } },
    '<measured>',
  ) as Measured[];
  const results = cards.map((card, place) => {
    const names = card.parts.map(({ name }) => name);
    return { card, fit: fitCard(measured[place] as Measured, names) };
  });
  const over = results.flatMap(({ card, fit }) => ('excess' in fit ? [{ card: card.id, excess: fit.excess }] : []));
  if (over.length > 0) throw new CardOverflow(setId, format, over);
  const fits = results.flatMap(({ card, fit }) => ('excess' in fit ? [] : [{ card, fit }]));
  return {
    title: selection.set.title,
    cards: fits.map(({ card, fit }) => applyFit(card, fit)),
    fits: fits.map(({ card, fit }) => ({ card: card.id, ...fit })),
  };
}

/** How every card of a set is set in a format: body size, faces, and which whole parts were left out. Throws CardOverflow. */
export function cardFits(library: Library, setId: string, format: CardFormat): CardFit[] {
  return fittedSet(library, setId, format).fits;
}

/**
 * The PDF of a card set: tagged PDF/UA-1, the same bytes each time.
 * Throws CardOverflow naming every card that does not fit, TypesettingError when a page cannot be set.
 */
export function cardPdf(library: Library, setId: string, size: CardSize): Uint8Array {
  const format = formatOf[size];
  const { title, cards } = fittedSet(library, setId, format);
  const document = { title: `${title}: pocket cards, ${cardSizes[size]}`, format, cards };
  return size === format
    ? compilePdf({ template: 'card-deck.typ', data: document })
    : compilePdf({
        template: 'card-sheet.typ',
        data: { ...document, paper: size, sheets: imposeSheets(cards.length) },
      });
}
