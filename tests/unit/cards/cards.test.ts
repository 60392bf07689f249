import { describe, expect, test } from 'vitest';
import type { Manoeuvre } from '../../../schemas/manoeuvre.ts';
import { cardsOf } from '../../../src/cards/cards.ts';
import { flagGroups } from '../../../src/cards/order.ts';
import { partsOf } from '../../../src/cards/parts.ts';
import { cardSetsOf, selectCards } from '../../../src/cards/select.ts';
import { positionText } from '../../../src/cards/strip.ts';
import { plainText } from '../../../src/text/plain.ts';
import { fixtureLibrary, fixtureManoeuvre } from '../../fixtures/library.ts';
import { libraryWith } from './library-with.ts';

const cards = cardsOf(fixtureLibrary, 'wrist');
const cardOf = (change: Partial<Manoeuvre>) => {
  const [card] = cardsOf(libraryWith([{ ...fixtureManoeuvre('wrist-look'), ...change }]), 'wrist');
  if (!card) throw new Error('no card was made');
  return card;
};

describe('selectCards', () => {
  test('takes the manoeuvres of the system in page order', () => {
    expect(selectCards(fixtureLibrary, 'wrist').manoeuvres.map(({ id }) => id)).toEqual(['wrist-look', 'wrist-bend']);
  });

  test('keeps to the scopes of the set', () => {
    const [set] = fixtureLibrary.cardSets;
    const library = { ...fixtureLibrary, cardSets: [{ ...set, scopes: ['complete'] }] } as typeof fixtureLibrary;
    expect(cardsOf(library, 'wrist').map(({ id }) => id)).toEqual(['wrist-bend']);
    expect(cardsOf(library, 'wrist').map(({ number, count }) => [number, count])).toEqual([[1, 1]]);
  });

  test('names what is missing', () => {
    expect(() => selectCards(fixtureLibrary, 'ankle')).toThrow('no card set has the id "ankle"');
    expect(() => selectCards({ ...fixtureLibrary, protocols: [] }, 'wrist')).toThrow('"wrist", which has no page');
  });

  test('offers only sets whose system has a page', () => {
    expect(cardSetsOf(fixtureLibrary).map(({ id }) => id)).toEqual(['wrist']);
    expect(cardSetsOf({ ...fixtureLibrary, protocols: [] })).toEqual([]);
  });
});

describe('a card', () => {
  test('holds every red flag with its action and every caution', () => {
    const manoeuvres = fixtureLibrary.protocols
      .flatMap((one) => one.manoeuvres)
      .filter(({ system }) => system === 'wrist');
    for (const [place, manoeuvre] of manoeuvres.entries()) {
      const flags = cards[place]?.redFlags.flatMap((group) => group.flags) ?? [];
      expect(flags).toHaveLength(manoeuvre.redFlags.length);
      for (const { finding, action } of manoeuvre.redFlags) expect(flags).toContainEqual({ finding, action });
      expect(cards[place]?.cautions).toEqual(manoeuvre.cautions);
    }
  });

  test('says how fast in words, most urgent first whatever the order of the page', () => {
    const line = (text: string) => [{ type: 'text' as const, text }];
    const flag = (urgency: 'now' | 'today' | 'soon') => ({ urgency, finding: line(urgency), action: line('act') });
    const groups = flagGroups([flag('soon'), flag('today'), flag('now'), flag('today')]);
    expect(groups.map(({ words }) => words)).toEqual([
      'Now: stop and act',
      'Today: same-day senior review',
      'Soon: an appointment, by local protocol',
    ]);
    expect(groups.map(({ flags }) => flags.length)).toEqual([1, 2, 1]);
  });

  test('puts red flags and cautions before anything the hands do', () => {
    const [look] = cards;
    expect(look && partsOf(look, fixtureLibrary).map(({ name }) => name)).toEqual([
      'flags',
      'cautions',
      'steps',
      'say',
      'normal',
      'abnormal',
      'errors',
      'record',
    ]);
  });

  test('takes the lines written for it, else the technique', () => {
    const steps = cards.map((card) => card.steps.map((line) => plainText(line, fixtureLibrary)));
    expect(steps[0]).toEqual(['Both wrists, palms down, palms up.']);
    expect(steps[1]).toHaveLength(fixtureManoeuvre('wrist-bend').technique.length);
  });

  test('asks for consent first where the examination is sensitive', () => {
    const first = cardOf({ sensitive: true }).cautions.map((line) => plainText(line, fixtureLibrary));
    expect(first[0]).toBe('Sensitive: explicit consent, chaperone offered, stop when asked.');
    expect(first).toHaveLength(fixtureManoeuvre('wrist-look').cautions.length + 1);
  });

  test('bears set, number, edition and review', () => {
    expect(cards.map(({ set, number, count }) => [set, number, count])).toEqual([
      ['Wrist', 1, 2],
      ['Wrist', 2, 2],
    ]);
    expect(cards[0]?.edition).toBe(`v${fixtureLibrary.version} · ${fixtureLibrary.hash.slice(0, 8)}`);
    expect(cards[0]?.review).toBe('Review: fixture reviewer, 10 Jan 2026');
  });
});

describe('the strip', () => {
  test.each([
    [
      { stages: [['sitting', 'supine']], sides: 'both', seconds: 10 },
      'Sitting or lying on the back; both sides; 10\u202fs',
    ],
    [
      { stages: [['sitting'], ['standing']], sides: 'none', seconds: 90 },
      'Sitting, then standing; 1\u202fmin 30\u202fs',
    ],
    [
      { stages: [fixtureLibrary.positions.map(({ id }) => id)], sides: 'left', seconds: 60 },
      'Any position; left side; 1\u202fmin',
    ],
  ] as const)('says position, side and time: %#', (change, words) => {
    expect(cardOf(change as unknown as Partial<Manoeuvre>).strip[0]).toEqual({ label: 'Position', text: words });
  });

  test('joins three positions as a sentence does, the later ones small', () => {
    const positions = ['Chair', 'Sitting', 'Supine', 'Standing'].map((label) => ({ id: label.toLowerCase(), label }));
    const text = positionText([['chair', 'sitting', 'supine'], ['standing']], {
      ...fixtureLibrary,
      positions,
    } as never);
    expect(text).toBe('Chair, sitting or supine, then standing');
  });

  test('says what is uncovered and laid out, and leaves out an empty list', () => {
    const labels = cards.map(({ strip }) => strip.map(({ label }) => label));
    expect(labels).toEqual([
      ['Position', 'Examiner', 'Uncover'],
      ['Position', 'Examiner', 'Uncover', 'Lay out'],
    ]);
    expect(cardOf({ exposure: ['none'] }).strip.find(({ label }) => label === 'Uncover')?.text).toBe('Nothing');
  });

  test('marks every position once, and all of them as one', () => {
    expect(cardOf({ stages: [['sitting', 'supine'], ['sitting']] }).marks).toEqual(['sitting', 'supine']);
    expect(cardOf({ stages: [fixtureLibrary.positions.map(({ id }) => id)] }).marks).toEqual(['any']);
  });
});

test('what to record names unit, side and grades', () => {
  expect(cards.map(({ record }) => record)).toEqual([
    ['Shape, right and left', 'Remark'],
    ['Angle (°), right and left', 'Strength, left: 0 / 1 / 2', 'Click, and which side'],
  ]);
});
