import type { Card } from '../cards/card.ts';
import type { CardFit } from '../cards/fitted-set.ts';

const partWords = { errors: 'common errors', record: 'what to record' } as const;

/** Says which cards of a size leave out a whole part for want of room: one sentence a part, none where nothing is missing. */
export function leftOutWords(size: string, cards: readonly Card[], fits: readonly CardFit[]): string[] {
  return (['errors', 'record'] as const).flatMap((part) => {
    const numbers = fits
      .filter(({ leftOut }) => leftOut.includes(part))
      .map(({ card }) => cards.find(({ id }) => id === card)?.number ?? 0);
    if (numbers.length === 0) return [];
    const which = numbers.length === 1 ? `Card ${numbers.join('')} leaves` : `Cards ${numbers.join(', ')} leave`;
    return [`${which} out ${partWords[part]} at ${size} for want of room; red flags and cautions are never left out.`];
  });
}
