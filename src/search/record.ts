/** What a page is, in the word that filters and results show. */
export type PageKind = 'Manoeuvre' | 'System' | 'Guide' | 'Form' | 'Cards' | 'Tool';

/** What pages can be filtered by. */
export type FilterName = 'kind' | 'system' | 'position' | 'instrument' | 'scope';

/** A stretch of a page's text and how much a word in it counts: 1 for running text, up to 10. */
export interface Passage {
  text: string;
  weight: number;
}

/** What a result shows beside its title and its quotation; in words. */
export interface Shown {
  /** Title of the system. */
  system?: string;
  /** Label of the first position, which has the mark. */
  position?: string;
  /** Urgencies of the red flags and how many there are of each: "2 now, 1 today". */
  flags?: string;
}

/** One page as look-up knows it. */
export interface SearchRecord {
  /** Address below the base path, with a slash at both ends; the index adds the base path when it answers. */
  url: string;
  kind: PageKind;
  title: string;
  /** Other names that people type; searched like the title, never quoted. */
  names: readonly string[];
  /** Text to search and to quote from; the first passage says what the page is for. */
  passages: readonly Passage[];
  /** American spellings of words in the passages that the page has nowhere; never quoted. */
  spellings: readonly string[];
  /** Values in words, as a list to choose from shows them. */
  filters: Partial<Record<FilterName, readonly string[]>>;
  shown: Shown;
}
