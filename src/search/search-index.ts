/** How many pages have each value of a filter. */
export type Counts = Readonly<Record<string, number>>;

/** What has been chosen: a value by filter. */
export type Chosen = Readonly<Record<string, string>>;

/** A page that was found, its address with the base path. */
export interface FoundPage {
  url: string;
  content: string;
  meta: Readonly<Record<string, string>>;
}

/** A page that was found, before it is fetched. */
export interface Hit {
  id: string;
  score: number;
  data(): Promise<FoundPage>;
}

/** The part of the search index's interface that look-up uses; `null` words are every page. */
export interface SearchIndex {
  search(
    words: string | null,
    options: { filters: Chosen; sort?: Readonly<Record<string, 'asc'>> },
  ): Promise<{ results: Hit[]; filters: Readonly<Record<string, Counts>> }>;
  /** Fetches the filters, once; before that, no counts come with an answer. */
  filters(): Promise<unknown>;
}
