import { expect, test } from 'vitest';
import { cardsOf } from '../../../src/cards/cards.ts';
import type { CardFit } from '../../../src/cards/fitted-set.ts';
import { leftOutWords } from '../../../src/components/left-out-words.ts';
import { fixtureLibrary } from '../../fixtures/library.ts';

const cards = cardsOf(fixtureLibrary, 'wrist');
const fit = (card: string, leftOut: CardFit['leftOut']): CardFit => ({
  ...{ card, leftOut, size: 8, line: 10, stretch: 100, front: [], back: [] },
});

test('says which cards leave out which part, by number', () => {
  expect(leftOutWords('A6', cards, [fit('wrist-look', ['errors']), fit('wrist-bend', ['errors', 'record'])])).toEqual([
    'Cards 1, 2 leave out common errors at A6 for want of room; red flags and cautions are never left out.',
    'Card 2 leaves out what to record at A6 for want of room; red flags and cautions are never left out.',
  ]);
});

test('says nothing where nothing is missing', () => {
  expect(leftOutWords('A6', cards, [fit('wrist-look', [])])).toEqual([]);
});
