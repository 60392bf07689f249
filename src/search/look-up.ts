import type { Chosen, Counts, Hit, SearchIndex } from './search-index.ts';
import { everyWordOf, mayAnswerTo } from './words.ts';

/** Where to look. */
export interface Ground {
  index: SearchIndex;
  chosen?: Chosen;
  /** Puts mistyped words right, or gives undefined; asked only when the words as typed have no answer. */
  correct: (words: readonly string[]) => Promise<readonly string[] | undefined>;
}

/** Pages in order of fit. */
export interface Answer {
  hits: readonly Hit[];
  /** The words that were looked up in place of mistyped ones. */
  meant?: string;
  /** No page has all the words: these have some. */
  partly?: true;
}

/**
 * Looks words up among the pages that fit what was chosen. Mistyped words are put right where the right ones are known;
 * where no page has all the words, pages with some answer. Without words: all pages that fit, in order of examination.
 */
export async function lookUp(typed: string, ground: Ground): Promise<Answer> {
  const words = everyWordOf(typed);
  if (words.length === 0) return { hits: await pagesChosen(ground) };
  const hits = await sound(words, ground);
  if (hits.length > 0) return { hits };
  const meant = await ground.correct(words);
  const right = meant === undefined ? {} : { meant: meant.join(' ') };
  const better = meant === undefined ? [] : await sound(meant, ground);
  if (better.length > 0) return { hits: better, ...right };
  const some = await pagesWithSome(meant ?? words, ground);
  return some.length === 0 ? { hits: some } : { hits: some, ...right, partly: true };
}

async function pagesChosen({ index, chosen = {} }: Ground): Promise<Hit[]> {
  if (Object.keys(chosen).length === 0) return [];
  return (await index.search(null, { filters: chosen, sort: { order: 'asc' } })).results;
}

/**
 * Pages that have all the words. The index puts the nearest shorter word for one that it does not know ("spelen" finds
 * "s"): what it gives then has nothing to do with the question, and counts as nothing.
 */
async function sound(words: readonly string[], { index, chosen = {} }: Ground): Promise<Hit[]> {
  const { results } = await index.search(words.join(' '), { filters: chosen });
  const first = await results[0]?.data();
  if (first === undefined) return [];
  const there = everyWordOf([first.content, ...Object.values(first.meta)].join(' '));
  return words.every((word) => there.some((other) => mayAnswerTo(word, other))) ? results : [];
}

async function pagesWithSome(words: readonly string[], ground: Ground): Promise<Hit[]> {
  const sums = new Map<string, Hit>();
  for (const word of words) {
    for (const hit of await sound([word], ground)) {
      const score = hit.score + (sums.get(hit.id)?.score ?? 0);
      sums.set(hit.id, { id: hit.id, score, data: () => hit.data() });
    }
  }
  return [...sums.values()].sort((a, b) => b.score - a.score);
}

/** How many pages each value of a filter would leave, the other filters staying as chosen. */
export async function countsOf(filter: string, typed: string, { index, chosen = {} }: Ground): Promise<Counts> {
  const others = Object.fromEntries(Object.entries(chosen).filter(([name]) => name !== filter));
  const words = everyWordOf(typed).join(' ');
  await index.filters();
  return (await index.search(words === '' ? null : words, { filters: others })).filters[filter] ?? {};
}
