import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { cardFits, cardPdf, cardsOf } from '../../src/cards/cards.ts';
import { cardSizes, formatOf, type CardFormat, type CardSize } from '../../src/cards/formats.ts';
import { CardOverflow } from '../../src/cards/overflow.ts';
import { cardSetsOf } from '../../src/cards/select.ts';
import { requireLibrary } from '../../src/library/load.ts';

const usage = `node tests/bench/cards.ts [SET …] [--out DIR]

Prints how each card of a set fits, and how long each deck takes. Every set without a SET; writes the PDFs to DIR where given.`;

const arguments_ = process.argv.slice(2);
const out = arguments_.includes('--out') ? arguments_[arguments_.indexOf('--out') + 1] : undefined;
const wanted = arguments_.filter((one) => !one.startsWith('--') && one !== out);

const library = requireLibrary('content');

const timed = <T>(work: () => T): [T, number] => {
  const start = performance.now();
  return [work(), performance.now() - start];
};

function printFits(set: string, format: CardFormat): boolean {
  try {
    const [fits, time] = timed(() => cardFits(library, set, format));
    console.log(`${set} ${format}: ${fits.length} cards measured and fitted in ${time.toFixed(0)} ms`);
    for (const { card, size, line, stretch, front, leftOut } of fits) {
      const without = leftOut.length > 0 ? `, without ${leftOut.join(', ')}` : '';
      console.log(
        `  ${card.padEnd(28)} ${size}/${line} pt${stretch < 100 ? ' condensed' : ''}, front ends with ${front.at(-1)}${without}`,
      );
    }
    return true;
  } catch (error) {
    if (!(error instanceof CardOverflow)) throw error;
    console.log(error.message);
    return false;
  }
}

function printDeck(set: string, size: CardSize): void {
  const [bytes, time] = timed(() => cardPdf(library, set, size));
  console.log(`  ${set}.${size}.pdf: ${time.toFixed(0)} ms, ${(bytes.length / 1024).toFixed(0)} KB`);
  if (out !== undefined) writeFileSync(join(out, `${set}.${size}.pdf`), bytes);
}

if (arguments_.includes('--help')) console.log(usage);
else {
  const sets = wanted.length > 0 ? wanted : cardSetsOf(library).map(({ id }) => id);
  for (const set of sets) {
    console.log(`${set}: ${cardsOf(library, set).length} cards`);
    const fit = { a6: printFits(set, 'a6'), index: printFits(set, 'index') };
    for (const size of Object.keys(cardSizes) as CardSize[]) {
      if (fit[formatOf[size]]) printDeck(set, size);
    }
  }
}
