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
  count: number;
  key: Int32Array;
  visits: Int32Array;
  /** Words of a mark's set that are not empty: from `first[mark]` up to `first[mark + 1]`. */
  first: Int32Array;
  word: Int32Array;
  bits: Int32Array;
  chain: number[][];
}

function flat({ of }: Marks): FlatMarks {
  const marks = of.flatMap((list, key) => list.map((mark) => ({ ...mark, key })));
  const words = marks.map(({ set }) => [...set].flatMap((bits, word) => (bits === 0 ? [] : [{ word, bits }])));
  const first = [0];
  for (const list of words) first.push(first.at(-1)! + list.length);
  return {
    count: marks.length,
    key: Int32Array.from(marks, ({ key }) => key),
    visits: Int32Array.from(marks, ({ visits }) => visits),
    first: Int32Array.from(first),
    word: Int32Array.from(words.flat(), ({ word }) => word),
    bits: Int32Array.from(words.flat(), ({ bits }) => bits),
    chain: marks.map(({ chain }) => (chain.length > 1 ? chain : [])),
  };
}

function isOpen({ first, word, bits }: FlatMarks, mark: number, done: Words, at: number): boolean {
  for (let k = first[mark]!; k < first[mark + 1]!; k++) if ((bits[k]! & ~done[at + word[k]!]!) !== 0) return true;
  return false;
}

/**
 * Counts what must still be arrived at. The open items of an exposure (or place) fall into groups that no visit can serve
 * together; each asks for an arrival, or for one for each item of its chain, unless what there is at the end of one visit
 * stays for the next. That saves at most one at each change of visit, and one where the sheet has come to.
 */
export function arrivalsLeft({ problem, visits, due }: Tasks, marks: Marks): ArrivalsLeft {
  const { words } = problem;
  const list = flat(marks);
  const last = Math.min(visits.length - 1, mostVisits);
  /** Of each key with several groups: the visits that may serve one of them. */
  const shared = new Int32Array(marks.of.length);
  return ({ visit, now, isOver }, done, at) => {
    const isBound = isOver && !within(due[visit]!, 0, done, at, words);
    const ahead = bitsFrom(visit);
    let left = 0;
    let sharing = 0;
    /** Visits that hold something no other can serve. */
    let stops = 0;
    for (let mark = 0; mark < list.count;) {
      const key = list.key[mark]!;
      let served = 0;
      let groups = 0;
      for (; mark < list.count && list.key[mark] === key; mark++) {
        const here = list.visits[mark]! & ahead;
        if ((here & served) !== 0 || !isOpen(list, mark, done, at)) continue;
        if ((here & (here - 1)) === 0 && here !== 1 << mostVisits) stops |= here;
        served |= here;
        groups++;
        left += arrivals(list.chain[mark]!, done, at);
      }
      if (groups > 1) shared[sharing++] = served;
      if (key === now && groups > 0 && !isBound) left--;
    }
    return sharing === 0 ? left : left - stays(shared, sharing, stops, visit, last);
  };
}

/** How often a group asks for an arrival: once for each item of its chain that is still to do, and once at least. */
function arrivals(chain: readonly number[], done: Words, at: number): number {
  let open = 0;
  for (const item of chain) if (!has(done, at, item)) open++;
  return Math.max(1, open);
}

/** How many changes of visit may keep what is bare (or where the examiner is): both sides have a group of one key. */
function stays(shared: Int32Array, sharing: number, stops: number, first: number, last: number): number {
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
