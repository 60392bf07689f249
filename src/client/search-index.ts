import type { SearchIndex } from '../search/search-index.ts';

/** What the index's script offers, as far as it is used here. */
interface Script extends SearchIndex {
  options(options: Readonly<Record<string, unknown>>): Promise<void>;
  init(): Promise<void>;
}

/**
 * Fetches the search index at an address that ends in a slash. `edition` changes with the content, so that a browser
 * may keep what it fetched until then. Rejects when the index cannot be fetched.
 */
export async function openIndex(address: string, edition: string): Promise<SearchIndex> {
  const script = (await import(/* @vite-ignore */ `${address}pagefind.js`)) as Script;
  // Without a worker: one file less to fetch, and an answer takes a millisecond.
  await script.options({ noWorker: true, metaCacheTag: edition });
  await script.init();
  return script;
}

/**
 * Fetches the list of known words and what compares them, and puts mistyped words right where it can.
 * Rejects when one of them cannot be fetched.
 */
export async function correct(words: readonly string[], address: string): Promise<string[] | undefined> {
  const [{ didYouMean }, answer] = await Promise.all([import('../search/did-you-mean.ts'), fetch(address)]);
  return didYouMean(words, (await answer.json()) as string[]);
}
