import { describe, expect, test } from 'vitest';
import { cardFits, cardPdf, cardsOf } from '../../src/cards/cards.ts';
import { cardSetsOf, selectCards } from '../../src/cards/select.ts';
import { safetyWords } from '../../src/cards/words.ts';
import { requireLibrary } from '../../src/library/load.ts';
import { plainText } from '../../src/text/plain.ts';
import { bare, bareText, pages } from '../fixtures/pdf-text.ts';

const library = requireLibrary('content');
const decks = cardSetsOf(library).flatMap(({ id }) =>
  (['a6', 'index'] as const).map((format) => [id, format] as const),
);

test('every page has a set of cards, and every set a page', () => {
  const systems = library.protocols.map(({ system }) => system).toSorted();
  expect(library.cardSets.map(({ system }) => system).toSorted()).toEqual(systems);
});

describe.each(decks)('%s at %s', (set, format) => {
  const cards = cardsOf(library, set);

  test('every card fits, with red flags and cautions first', () => {
    const fits = cardFits(library, set, format);
    expect(fits.map(({ card }) => card)).toEqual(cards.map(({ id }) => id));
    for (const { front, back, size } of fits) {
      const read = [...front, ...back];
      const safety = ['flags', 'cautions'].filter((name) => read.some((part) => part === name));
      expect(read.slice(0, safety.length)).toEqual(safety);
      expect(size).toBeGreaterThanOrEqual(7.5);
    }
  });

  test('no red flag, action or caution is missing, and none comes after the technique', async () => {
    const faces = (await pages(cardPdf(library, set, format))).map(bareText);
    const { manoeuvres } = selectCards(library, set);
    expect(faces).toHaveLength(2 * manoeuvres.length);
    for (const [place, manoeuvre] of manoeuvres.entries()) {
      const text = faces.slice(2 * place, 2 * place + 2).join('');
      const said = (line: Parameters<typeof plainText>[0]) => text.indexOf(bare(plainText(line, library)));
      const technique = said(cards[place]?.steps[0] ?? []);
      const safety = [...manoeuvre.redFlags.flatMap(({ finding, action }) => [finding, action]), ...manoeuvre.cautions];
      for (const line of safety) {
        expect(said(line), `${manoeuvre.id}: ${plainText(line, library)}`).toBeGreaterThan(0);
        expect(said(line), `${manoeuvre.id}: ${plainText(line, library)}`).toBeLessThan(technique);
      }
      for (const line of [...manoeuvre.tell, ...manoeuvre.normal, ...manoeuvre.abnormal])
        expect(said(line), `${manoeuvre.id}: ${plainText(line, library)}`).toBeGreaterThan(0);
      expect(text.split(bare(safetyWords))).toHaveLength(3);
    }
  });
});
