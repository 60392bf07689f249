import type { FoundPage } from './search-index.ts';
import { answersTo, everyWordOf } from './words.ts';

/** A stretch of a quotation, and whether it is a word that was looked up. */
export interface Stretch {
  text: string;
  marked: boolean;
}

/**
 * What a result says of its page: what the page is for, its first sentence, as long as a name or that sentence shows why
 * it was found; else the first of the sentences that hold most of the words, after an ellipsis.
 */
export function quotation({ content, meta }: FoundPage, typed: string): Stretch[] {
  const words = everyWordOf(typed);
  const [aim = '', ...others] = content.split(/(?<=[.?!])\s+/);
  const named = held(words, `${meta['title'] ?? ''} ${meta['names'] ?? ''}`) === words.length;
  if (named || held(words, aim) > 0) return marked(aim, words);
  const most = Math.max(0, ...others.map((sentence) => held(words, sentence)));
  const quoted = others.find((sentence) => held(words, sentence) === most);
  return most === 0 || quoted === undefined ? marked(aim, words) : marked(`… ${quoted}`, words);
}

function held(words: readonly string[], text: string): number {
  const there = everyWordOf(text);
  return words.filter((word) => there.some((other) => answersTo(word, other))).length;
}

function marked(text: string, words: readonly string[]): Stretch[] {
  return text
    .split(/([\p{L}\p{N}'’]+)/u)
    .filter((part) => part !== '')
    .map((part) => ({ text: part, marked: isTyped(part, words) }));
}

function isTyped(part: string, words: readonly string[]): boolean {
  const [first] = everyWordOf(part);
  return first !== undefined && words.some((word) => answersTo(word, first));
}
