import type { Library } from '../../schemas/library.ts';
import { compilePdf } from '../pdf/engine.ts';
import type { Card } from './card.ts';
import { contactsCards } from './contacts-card.ts';
import { fittedSet, type CardFit } from './fitted-set.ts';
import { cardSizes, formatOf, type CardFormat, type CardSize } from './formats.ts';
import { imposeSheets } from './impose.ts';
import { orderCards } from './order.ts';
import { selectCards } from './select.ts';

/** The cards of a set in page order. Throws RangeError for a set that is not there. */
export function cardsOf(library: Library, setId: string): Card[] {
  return orderCards(selectCards(library, setId), library);
}

/** How every card of a set is set in a format: body size, faces, and which whole parts were left out. Throws CardOverflow. */
export function cardFits(library: Library, setId: string, format: CardFormat): CardFit[] {
  return fittedSet(library, setId, format).fits;
}

/**
 * The PDF of a card set: tagged PDF/UA-1, the same bytes each time.
 * Throws CardOverflow naming every card that does not fit, TypesettingError when a page cannot be set.
 */
export function cardPdf(library: Library, setId: string, size: CardSize): Uint8Array<ArrayBuffer> {
  const format = formatOf[size];
  const { title, cards: fitted } = fittedSet(library, setId, format);
  const cards = [...fitted, ...contactsCards(library, selectCards(library, setId))];
  const document = { title: `${title}: pocket cards, ${cardSizes[size]}`, format, cards };
  if (size === format) return compilePdf({ template: 'card-deck.typ', data: document });
  const sheets = imposeSheets(cards.length);
  return compilePdf({ template: 'card-sheet.typ', data: { ...document, paper: size, sheets } });
}
