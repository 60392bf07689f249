import type { WatchedItem } from './observation.ts';
import { type Rating, ratings } from './observation-words.ts';

/** Marks of one observer by manoeuvre; what was left blank is not in it. */
export type Ratings = ReadonlyMap<string, Rating>;

/** An item as two observers marked it. */
export interface Compared {
  item: Pick<WatchedItem, 'manoeuvre' | 'title' | 'number' | 'critical'>;
  first?: Rating;
  second?: Rating;
  /** `one`: only one of them marked it; `none`: neither did. */
  verdict: 'same' | 'different' | 'one' | 'none';
}

/** How far two observers of the same examination agree. */
export interface Agreement {
  items: Compared[];
  /** Items that both marked, and marked the same. */
  same: number;
  /** Items that both marked. */
  both: number;
  /** What they marked differently, safety-critical items first: what to talk about. */
  different: Compared[];
}

/** Compares two observers item by item. Only items that both marked count for or against agreement. */
export function agreementOf(items: readonly Compared['item'][], first: Ratings, second: Ratings): Agreement {
  const compared = items.map((item) => compare(item, first.get(item.manoeuvre), second.get(item.manoeuvre)));
  const different = compared.filter(({ verdict }) => verdict === 'different');
  const same = compared.filter(({ verdict }) => verdict === 'same').length;
  return { items: compared, same, both: same + different.length, different: different.toSorted(criticalFirst) };
}

/** The agreement in words: one line for the count, then one for each item that was marked differently. */
export function agreementLines({ same, both, different }: Agreement): string[] {
  if (both === 0) return ['No item has been marked by both observers yet.'];
  const count = `Marked the same: ${same} of the ${both} items that both marked.`;
  return [count, ...different.map(differenceWords)];
}

function compare(item: Compared['item'], first: Rating | undefined, second: Rating | undefined): Compared {
  const marked = { ...(first === undefined ? {} : { first }), ...(second === undefined ? {} : { second }) };
  return { item, ...marked, verdict: verdictOf(first, second) };
}

function verdictOf(first: Rating | undefined, second: Rating | undefined): Compared['verdict'] {
  if (first === undefined && second === undefined) return 'none';
  if (first === undefined || second === undefined) return 'one';
  return first === second ? 'same' : 'different';
}

const criticalFirst = (one: Compared, other: Compared): number =>
  Number(other.item.critical) - Number(one.item.critical) || one.item.number - other.item.number;

function differenceWords({ item, first, second }: Compared): string {
  const mark = (rating: Rating | undefined): string => ratings.find(({ code }) => code === rating)?.label ?? 'blank';
  const critical = item.critical ? ', safety-critical' : '';
  return `${item.number} ${item.title}${critical}: ${mark(first)} / ${mark(second)}`;
}
