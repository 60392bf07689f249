import type { Library } from '../../schemas/library.ts';
import { queryDocument } from '../pdf/engine.ts';
import { fitCard, mayGo, type Excess, type Fit, type Measured } from './fit.ts';
import { cutsOf, type CardFormat } from './formats.ts';
import { orderCards } from './order.ts';
import { CardOverflow } from './overflow.ts';
import { selectCards } from './select.ts';
import { applyFit, typesetCard, type FittedCard, type TypesetCard } from './typeset.ts';

/** How one card is set in one format. */
export type CardFit = Fit & { card: string };

/** A set whose every card has its size and faces. */
export interface FittedSet {
  title: string;
  cards: FittedCard[];
  fits: CardFit[];
}

const known = new WeakMap<Library, Map<string, FittedSet>>();

/** Fits a set in a format, once per Library: decks and sheets share it. Throws CardOverflow naming every card that does not fit. */
export function fittedSet(library: Library, setId: string, format: CardFormat): FittedSet {
  const sets = known.get(library) ?? new Map<string, FittedSet>();
  known.set(library, sets);
  const key = `${setId} ${format}`;
  const found = sets.get(key) ?? fitSet(library, setId, format);
  sets.set(key, found);
  return found;
}

function fitSet(library: Library, setId: string, format: CardFormat): FittedSet {
  const selection = selectCards(library, setId);
  const cards = orderCards(selection, library).map((card) => typesetCard(card, library));
  const results = fitCards(cards, format);
  const over = results.flatMap(({ card, fit }) => ('excess' in fit ? [{ card: card.id, excess: fit.excess }] : []));
  if (over.length > 0) throw new CardOverflow(setId, format, over);
  const fits = results.flatMap(({ card, fit }) => ('excess' in fit ? [] : [{ card, fit }]));
  return {
    title: selection.set.title,
    cards: fits.map(({ card, fit }) => applyFit(card, fit)),
    fits: fits.map(({ card, fit }) => ({ card: card.id, ...fit })),
  };
}

interface Result {
  card: TypesetCard;
  fit: Fit | Excess;
}

/** Tries the cuts of the format in turn; only cards that overflow one are measured in the next. */
function fitCards(cards: readonly TypesetCard[], format: CardFormat): Result[] {
  return cutsOf[format].reduce<Result[]>(
    (results, stretch) => {
      const pending = results.filter(({ fit }) => 'excess' in fit).map(({ card }) => card);
      const fits = fitInCut(pending, format, stretch);
      return results.map((result) => ({ ...result, fit: fits.get(result.card) ?? result.fit }));
    },
    cards.map((card) => ({ card, fit: { excess: Infinity } })),
  );
}

function fitInCut(cards: readonly TypesetCard[], format: CardFormat, stretch: number): Map<TypesetCard, Fit | Excess> {
  if (cards.length === 0) return new Map();
  const request = { template: 'card-measure.typ', data: { format, stretch, cards, mayGo } };
  const measured = new Map((queryDocument(request, '<measured>') as Measured[]).map((one) => [one.id, one]));
  return new Map(
    cards.map((card) => {
      const heights = measured.get(card.id);
      if (!heights) throw new RangeError(`card "${card.id}" was not measured`);
      return [
        card,
        fitCard(
          heights,
          card.parts.map(({ name }) => name),
        ),
      ];
    }),
  );
}
