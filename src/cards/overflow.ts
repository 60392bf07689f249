/** A card that does not hold what it must, and by how many points its fuller face goes over. */
export interface Overflow {
  card: string;
  excess: number;
}

/** Thrown when cards of a set do not fit: the build stops, and every such card is named. */
export class CardOverflow extends Error {
  override name = 'CardOverflow';
  readonly cards: readonly Overflow[];

  constructor(set: string, format: string, cards: readonly Overflow[]) {
    super(cards.map(({ card, excess }) => overflowText(set, format, card, excess)).join('\n'));
    this.cards = cards;
  }
}

const overflowText = (set: string, format: string, card: string, excess: number): string =>
  `Card "${card}" of the set "${set}" goes ${excess.toFixed(1)} pt (about ${Math.ceil(excess / 8.75)} lines) over its ${format} face at the smallest size. ` +
  'Shorten its "### Card" lines or findings; red flags and cautions are never cut.';
