import { has, within, type Words } from '../search/sets.ts';
import { bitsFrom, mostVisits, type Marks, type Tasks } from './tasks.ts';

/** Where a sheet has come to. */
export interface Reached {
  visit: number;
  /** The exposure (or place) that there is now; `nowhere` before the first. */
  now: number;
  /** Whether nothing more can be done with it before something else. */
  isOver: boolean;
}

/** Least number of arrivals still to come, with the items in the set at `at` done. */
export type ArrivalsLeft = (reached: Reached, done: Words, at: number) => number;

/** Marks one after the other in flat lists: this is asked for thousands of times a sheet. */
interface FlatMarks {
  /** Marks of a key (exposure or place): from `firstOf[key]` up to `firstOf[key + 1]`. */
  firstOf: Int32Array;
  visits: Int32Array;
  /** Words of a mark's set that are not empty: from `first[mark]` up to `first[mark + 1]`. */
  first: Int32Array;
  word: Int32Array;
  bits: Int32Array;
  chain: number[][];
}

function flat({ of }: Marks): FlatMarks {
  const marks = of.flat();
  const words = marks.map(({ set }) => [...set].flatMap((bits, word) => (bits === 0 ? [] : [{ word, bits }])));
  return {
    firstOf: firstsOf(of),
    visits: Int32Array.from(marks, ({ visits }) => visits),
    first: firstsOf(words),
    word: Int32Array.from(words.flat(), ({ word }) => word),
    bits: Int32Array.from(words.flat(), ({ bits }) => bits),
    chain: marks.map(({ chain }) => (chain.length > 1 ? chain : [])),
  };
}

/** Where each list begins when all of them stand one after the other, and where the last ends. */
function firstsOf(lists: readonly (readonly unknown[])[]): Int32Array {
  const first = new Int32Array(lists.length + 1);
  lists.forEach(({ length }, i) => (first[i + 1] = first[i]! + length));
  return first;
}

function isOpen({ first, word, bits }: FlatMarks, mark: number, done: Words, at: number): boolean {
  for (let k = first[mark]!; k < first[mark + 1]!; k++) if ((bits[k]! & ~done[at + word[k]!]!) !== 0) return true;
  return false;
}

/** What was counted of one key after the other. */
interface Tally {
  /** Arrivals, as if nothing could stay from one visit to the next. */
  left: number;
  /** Visits that hold something no other can serve, as bits. */
  stops: number;
  /** Visits that may serve one of a key's groups, of each key that has several; as many as `sharing` says. */
  shared: Int32Array;
  sharing: number;
}

/**
 * Counts what must still be arrived at. The open items of an exposure (or place) fall into groups that no visit can serve
 * together; each asks for an arrival, or for one for each item of its chain, unless what there is at the end of one visit
 * stays for the next. That saves at most one at each change of visit, and one where the sheet has come to.
 */
export function arrivalsLeft({ problem, visits, due }: Tasks, marks: Marks): ArrivalsLeft {
  const { words } = problem;
  const list = flat(marks);
  const keys = marks.of.length;
  const last = Math.min(visits.length - 1, mostVisits);
  const tally: Tally = { left: 0, stops: 0, shared: new Int32Array(keys), sharing: 0 };
  return ({ visit, now, isOver }, done, at) => {
    const isBound = isOver && !within(due[visit]!, 0, done, at, words);
    const ahead = bitsFrom(visit);
    tally.left = tally.stops = tally.sharing = 0;
    for (let key = 0; key < keys; key++) {
      const isWanted = countKey(list, key, ahead, done, at, tally);
      if (isWanted && key === now && !isBound) tally.left--;
    }
    return tally.sharing === 0 ? tally.left : tally.left - stays(tally, visit, last);
  };
}

/** Adds the groups of one key to the tally; returns whether there are any. */
function countKey(list: FlatMarks, key: number, ahead: number, done: Words, at: number, tally: Tally): boolean {
  const end = list.firstOf[key + 1]!;
  let served = 0;
  let groups = 0;
  for (let mark = list.firstOf[key]!; mark < end; mark++) {
    const here = list.visits[mark]! & ahead;
    if ((here & served) !== 0 || !isOpen(list, mark, done, at)) continue;
    if ((here & (here - 1)) === 0 && here !== 1 << mostVisits) tally.stops |= here;
    served |= here;
    groups++;
    tally.left += arrivals(list.chain[mark]!, done, at);
  }
  if (groups > 1) tally.shared[tally.sharing++] = served;
  return groups > 0;
}

/** How often a group asks for an arrival: once for each item of its chain that is still to do, and once at least. */
function arrivals(chain: readonly number[], done: Words, at: number): number {
  let open = 0;
  for (const item of chain) if (!has(done, at, item)) open++;
  return Math.max(1, open);
}

/** How many changes of visit may keep what is bare (or where the examiner is): both sides have a group of one key. */
function stays({ shared, sharing, stops }: Tally, first: number, last: number): number {
  let count = 0;
  for (let v = first; v < last; v++) {
    // As far as the patient may go before something must be done in between.
    let reach = 0;
    for (let w = v + 1; w <= last; w++) {
      reach |= 1 << w;
      if ((stops >> w) & 1) break;
    }
    for (let k = 0; k < sharing; k++)
      if (((shared[k]! >> v) & 1) === 1 && (shared[k]! & reach) !== 0) {
        count++;
        break;
      }
  }
  return count;
}
