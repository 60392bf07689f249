import { describe, expect, test } from 'vitest';
import { cardFits, cardPdf } from '../../../src/cards/cards.ts';
import { cardSizes, type CardSize } from '../../../src/cards/formats.ts';
import { CardOverflow } from '../../../src/cards/overflow.ts';
import { safetyWords } from '../../../src/cards/words.ts';
import { plainText } from '../../../src/text/plain.ts';
import { fixtureLibrary, fixtureManoeuvre } from '../../fixtures/library.ts';
import { bare, bareText, pages, roles, type PageText } from '../../fixtures/pdf-text.ts';
import { fontLines, told } from '../../fixtures/pdf-tools.ts';
import { libraryWith, manyManoeuvres } from './library-with.ts';

const sizes = Object.keys(cardSizes) as CardSize[];
const millimetre = 72 / 25.4;
const six = libraryWith(manyManoeuvres(6));
const documents = new Map(sizes.map((size) => [size, cardPdf(six, 'wrist', size)]));
const bytesOf = (size: CardSize): Uint8Array => documents.get(size) ?? new Uint8Array();
const look = fixtureManoeuvre('wrist-look');

describe.each(sizes)('%s', (size) => {
  test('is sound, tagged, titled, with every font embedded', () => {
    expect(told('qpdf', bytesOf(size), '--check')).toContain('No syntax or stream encoding errors');
    const information = told('pdfinfo', bytesOf(size));
    expect(information).toMatch(/Tagged:\s+yes/);
    expect(information).toMatch(new RegExp(`Title:\\s+Wrist: pocket cards, ${cardSizes[size]}\n`));
    for (const font of fontLines(bytesOf(size))) expect(font).toMatch(/ yes +yes +yes +\d/);
  });

  test('keeps all text off the edge and at 7.5 pt or more', async () => {
    for (const { width, height, items } of await pages(bytesOf(size))) {
      expect(items.length).toBeGreaterThan(10);
      for (const { size: points, from, to } of items) {
        expect(points).toBeGreaterThanOrEqual(7.49);
        for (const [x, y] of [from, to]) {
          expect(x).toBeGreaterThan(6);
          expect(x).toBeLessThan(width - 6);
          expect(y).toBeGreaterThan(6);
          expect(y).toBeLessThan(height - 6);
        }
      }
    }
  });

  test('gives the same bytes twice', () => {
    const again = cardPdf(libraryWith(manyManoeuvres(6)), 'wrist', size);
    expect(Buffer.compare(again, bytesOf(size))).toBe(0);
  });
});

test('pages have the size of the card or of the sheet', async () => {
  const wanted: [CardSize, number, number, number][] = [
    ['a6', 105 * millimetre, 148 * millimetre, 12],
    ['index', 216, 360, 12],
    ['a4', 210 * millimetre, 297 * millimetre, 4],
    ['letter', 612, 792, 4],
  ];
  for (const [size, width, height, count] of wanted) {
    const found = await pages(bytesOf(size));
    expect(found).toHaveLength(count);
    for (const page of found) {
      expect(page.width).toBeCloseTo(width, 1);
      expect(page.height).toBeCloseTo(height, 1);
    }
  }
});

describe.each(['a6', 'index'] as const)('the two faces of a card at %s', (format) => {
  const said = async (): Promise<string[]> => (await pages(bytesOf(format))).map(bareText);

  test('each bear the safety line, the set, the number, the face and the edition', async () => {
    const [front = '', back = ''] = await said();
    for (const [face, text] of Object.entries({ front, back })) {
      expect(text).toContain(bare(safetyWords));
      expect(text).toContain(bare(`Wrist · card 1 of 6, ${face}`));
      expect(text).toContain(bare(`v${six.version} · ${six.hash.slice(0, 8)}`));
    }
    expect(front).toContain(bare('Review: fixture reviewer, 10 Jan 2026'));
  });

  test('hold every red flag with its action and every caution, before the technique', async () => {
    const text = (await said()).slice(0, 2).join('');
    const safety = [...look.redFlags.flatMap(({ finding, action }) => [finding, action]), ...look.cautions];
    const technique = text.indexOf(bare(plainText(look.card[0] ?? [], six)));
    expect(technique).toBeGreaterThan(0);
    for (const line of safety) {
      const place = text.indexOf(bare(plainText(line, six)));
      expect(place).toBeGreaterThan(0);
      expect(place).toBeLessThan(technique);
    }
    expect(text).toContain(bare('Now: stop and act'));
    expect(text).toContain(bare('Today: same-day senior review'));
  });

  test('hold what to say, findings, errors and fields', async () => {
    const text = (await said()).slice(0, 2).join('');
    for (const line of [...look.tell, ...look.normal, ...look.abnormal, ...look.errors])
      expect(text).toContain(bare(plainText(line, six)));
    expect(text).toContain(bare('Shape, right and left'));
  });

  test('are read as a title, parts and lists', async () => {
    const front = await roles(bytesOf(format), 1);
    expect(front.filter((role) => /^H\d$/.test(role))).toEqual(['H1', 'H2', 'H3', 'H3', 'H2', 'H2', 'H2']);
    expect(front.filter((role) => role === 'L')).toHaveLength(5);
    const back = await roles(bytesOf(format), 2);
    expect(back.filter((role) => /^H\d$/.test(role))[0]).toBe('H1');
    expect(back).not.toContain('Figure');
  });
});

test('likelihood ratios stand in words on the back', async () => {
  const text = (await pages(cardPdf(fixtureLibrary, 'wrist', 'a6'))).map(bareText).join('');
  expect(text).toContain(bare('more likely, LR+'));
});

test('text of an A6 face stands on a grid of half lines', async () => {
  const [fit] = cardFits(six, 'wrist', 'a6');
  const [front] = await pages(bytesOf('a6'));
  const body = front?.items.filter(({ size }) => Math.abs(size - (fit?.size ?? 0)) < 0.01) ?? [];
  const half = (fit?.line ?? 0) / 2;
  expect(body.length).toBeGreaterThan(10);
  const [first] = body;
  for (const { from } of body) {
    const steps = ((first?.from[1] ?? 0) - from[1]) / half;
    expect(Math.abs(steps - Math.round(steps))).toBeLessThan(0.02);
  }
});

describe('imposed sheets', () => {
  /** Column and row of the cell that holds a card's title, from the upper left. */
  const cellOf = ({ width, height, items }: PageText, title: string): string => {
    const found = items.find(({ text }) => text === title);
    if (!found) throw new Error(`no "${title}" on the sheet`);
    return `${found.from[0] < width / 2 ? 'left' : 'right'} ${found.from[1] > height / 2 ? 'upper' : 'lower'}`;
  };

  test.each(['a4', 'letter'] as const)('%s has each back behind its front', async (size) => {
    const found = await pages(bytesOf(size));
    const turned = {
      'left upper': 'right upper',
      'right upper': 'left upper',
      'left lower': 'right lower',
      'right lower': 'left lower',
    };
    for (let card = 1; card <= 6; card += 1) {
      const [front, back] = card <= 4 ? [found[0], found[1]] : [found[2], found[3]];
      if (!front || !back) throw new Error('sheets are missing');
      const cell = cellOf(front, `Look, way ${card}.`) as keyof typeof turned;
      expect(cellOf(back, `Look, way ${card}.`)).toBe(turned[cell]);
    }
  });

  test('Letter says outside the cards how to turn the sheet', async () => {
    const [front] = await pages(bytesOf('letter'));
    const note = front?.items.find(({ text }) => text.startsWith('Fronts of cards 1–4.'));
    expect(note?.from[1]).toBeGreaterThan(792 - 36);
    expect(note?.text).toContain('turned on the long edge');
  });
});

describe('a card that does not fit', () => {
  const caution = look.cautions[0] ?? [];
  const full = { ...look, id: 'wrist-full', cautions: Array.from({ length: 60 }, () => caution) };

  test.each(sizes)('stops %s and is named with its excess, red flags and cautions uncut', (size) => {
    const library = libraryWith([look, full]);
    expect(() => cardPdf(library, 'wrist', size)).toThrow(CardOverflow);
    expect(() => cardPdf(library, 'wrist', size)).toThrow(
      /Card "wrist-full" of the set "wrist" goes \d+\.\d pt \(about \d+ lines\) over/,
    );
    expect(() => cardPdf(library, 'wrist', size)).not.toThrow(/"wrist-look"/);
  });

  test('gives way by common errors, then fields, then by the condensed cut on the smaller card alone, then fails', () => {
    const fill = <T>(count: number, item: T): T[] => Array<T>(count).fill(item);
    const finding = [{ type: 'text' as const, text: 'A swelling beside the tendon that moves with it: ganglion.' }];
    const long = (count: number) => ({
      ...look,
      errors: fill(6, look.errors[0] ?? []),
      abnormal: fill(count, finding),
    });
    const stageOf = (count: number, format: 'a6' | 'index'): string => {
      try {
        const [fit] = cardFits(libraryWith([long(count)]), 'wrist', format);
        return fit?.stretch === 100 ? `without ${fit.leftOut.length}` : 'condensed';
      } catch (error) {
        if (error instanceof CardOverflow) return 'fails';
        throw error;
      }
    };
    const stages = (format: 'a6' | 'index', ...counts: number[]) => counts.map((count) => stageOf(count, format));
    expect(stages('index', 1, 14, 17, 20, 40)).toEqual(['without 0', 'without 1', 'without 2', 'condensed', 'fails']);
    expect(stages('a6', 1, 17, 40)).toEqual(['without 0', 'without 1', 'fails']);
  });
});
