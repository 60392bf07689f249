/** What is planned: one manoeuvre with its allowed positions by stage and what must come before it. */
export interface PlanItem {
  id: string;
  /** Alternative position ids of each stage. */
  stages: readonly (readonly string[])[];
  /** Ids that come first when they are on the sheet; others are ignored. */
  after: readonly string[];
}

/** Seconds to move the patient from one position to another; 0 when they are the same. */
export type ChangeSeconds = (from: string, to: string) => number;

/** The items as numbers, for the search. Item and position numbers are indexes. */
export interface Problem {
  ids: string[];
  positions: string[];
  /** 32-bit words of a set of items. */
  words: number;
  /** Cost of each change, `from * positions + to`; see `packCost`. */
  cost: Float64Array;
  /** Allowed positions of each item and stage, as bit masks. */
  masks: number[][];
  /** Items of several stages. */
  staged: number[];
  /** Items that can be done whole in each position, predecessors first. */
  whole: number[][];
  /** Predecessors of each item, as a set of items; item i has words i × words and following. */
  before: Uint32Array;
  /** All items, predecessors first. */
  order: number[];
  /** Position number of the patient at the start. */
  start: number | undefined;
}

const secondsUnit = 2 ** 24;
const changeUnit = 2 ** 12;

/**
 * One number for a change that compares as seconds first, then the number of changes, then how far the
 * change runs against the order of the vocabulary (seated, lying, standing: common practice). Each part
 * obeys the triangle inequality, so their sum does.
 */
const packCost = (seconds: number, from: number, to: number): number =>
  from === to ? 0 : seconds * secondsUnit + changeUnit + Math.max(0, from - to);

/** Whole seconds of a packed cost. */
export const secondsOf = (cost: number): number => Math.floor(cost / secondsUnit);

const masksOf = (item: PlanItem, number: ReadonlyMap<string, number>): number[] =>
  item.stages.map((stage) => stage.reduce((mask, position) => mask | (1 << number.get(position)!), 0));

const costsOf = (positions: readonly string[], change: ChangeSeconds): Float64Array =>
  Float64Array.from(
    positions.flatMap((from, a) => positions.map((to, b) => packCost(a === b ? 0 : change(from, to), a, b))),
  );

function predecessors(items: readonly PlanItem[], words: number): Uint32Array {
  const number = new Map(items.map((item, i) => [item.id, i]));
  const before = new Uint32Array(items.length * words);
  items.forEach((item, i) => {
    for (const id of item.after) {
      const j = number.get(id);
      if (j !== undefined) before[i * words + (j >> 5)]! |= 1 << (j & 31);
    }
  });
  return before;
}

/** Whether every member of the set at `inner` is in the set at `outer`. */
export function contains(outer: Uint32Array, at: number, inner: Uint32Array, from: number, words: number): boolean {
  for (let w = 0; w < words; w++) if ((inner[from + w]! & ~outer[at + w]!) !== 0) return false;
  return true;
}

/** Whether item `i` is in the set at `at`. */
export const has = (set: Uint32Array, at: number, i: number): boolean => ((set[at + (i >> 5)]! >>> (i & 31)) & 1) === 1;

/** Puts item `i` into the set at `at`. */
export function put(set: Uint32Array, at: number, i: number): void {
  set[at + (i >> 5)]! |= 1 << (i & 31);
}

function predecessorsFirst(ids: readonly string[], before: Uint32Array, words: number): number[] {
  const done = new Uint32Array(words);
  const order: number[] = [];
  for (let left = ids.map((_, i) => i); left.length > 0; ) {
    const ready = left.filter((i) => contains(done, 0, before, i * words, words));
    if (ready.length === 0) throw new Error(`the orders of ${left.map((i) => ids[i]).join(', ')} form a circle`);
    for (const i of ready) put(done, 0, i);
    order.push(...ready);
    left = left.filter((i) => !has(done, 0, i));
  }
  return order;
}

/**
 * Numbers the items for the search.
 * @param known position ids in the order of the vocabulary, which breaks ties
 * @throws Error when the orders form a circle
 */
export function problemOf(
  items: readonly PlanItem[],
  known: readonly string[],
  change: ChangeSeconds,
  start?: string,
): Problem {
  const used = new Set([...items.flatMap((item) => item.stages.flat()), ...(start === undefined ? [] : [start])]);
  const positions = known.filter((position) => used.has(position));
  const number = new Map(positions.map((position, i) => [position, i]));
  const words = Math.max(1, Math.ceil(items.length / 32));
  const before = predecessors(items, words);
  const order = predecessorsFirst(items.map((item) => item.id), before, words);
  const masks = items.map((item) => masksOf(item, number));
  const wholeIn = (p: number) => order.filter((i) => masks[i]!.every((mask) => (mask >> p) & 1));
  return {
    ids: items.map((item) => item.id),
    positions,
    words,
    cost: costsOf(positions, change),
    masks,
    staged: items.flatMap((item, i) => (item.stages.length > 1 ? [i] : [])),
    whole: positions.map((_, p) => wholeIn(p)),
    before,
    order,
    start: start === undefined ? undefined : number.get(start),
  };
}
