import { has, join, put, within, wordsFor, type Words } from './sets.ts';

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

/** The items as numbers, for the search. Items and positions go by their place in a list. */
export interface Problem {
  /** How many items, and how many words a set of them takes. */
  count: number;
  words: number;
  /** Position ids, in the order of the vocabulary. */
  positions: string[];
  /** Packed cost of each change, at `from × positions + to`. */
  cost: Float64Array;
  /** Allowed positions of each item and stage, as bits. */
  masks: number[][];
  /** Everything that must come before each item, directly or not; item i's set starts at `i × words`. */
  before: Words;
  /** All items, predecessors first. */
  order: number[];
  /** Items of several stages. */
  staged: number[];
  /** Items that can be done whole without leaving each position, predecessors first. */
  whole: number[][];
  /** Position number of the patient at the start. */
  start: number | undefined;
}

const secondsUnit = 2 ** 24;
const changeUnit = 2 ** 12;

/**
 * One number for a change that compares by seconds first, then by the number of changes, then by how far the change
 * goes back in the vocabulary's order of positions (seated, lying, standing: common practice). Each part obeys the
 * triangle inequality, so their sum does.
 */
const packCost = (seconds: number, from: number, to: number): number =>
  from === to ? 0 : seconds * secondsUnit + changeUnit + Math.max(0, from - to);

/** Whole seconds of a packed cost. */
export const secondsOf = (cost: number): number => Math.floor(cost / secondsUnit);

/** The least packed cost that comes to more than so many seconds. */
export const costAbove = (seconds: number): number => (seconds + 1) * secondsUnit;

function costsOf(positions: readonly string[], change: ChangeSeconds): Float64Array {
  return Float64Array.from(
    positions.flatMap((from, a) => positions.map((to, b) => packCost(a === b ? 0 : change(from, to), a, b))),
  );
}

function directOrders(items: readonly PlanItem[], words: number): Words {
  const number = new Map(items.map((item, i) => [item.id, i]));
  const before = new Uint32Array(items.length * words);
  items.forEach((item, i) => {
    for (const id of item.after) {
      const j = number.get(id);
      if (j !== undefined) put(before, i * words, j);
    }
  });
  return before;
}

function predecessorsFirst(items: readonly PlanItem[], before: Words, words: number): number[] {
  const done = new Uint32Array(words);
  const order: number[] = [];
  for (let left = items.map((_, i) => i); left.length > 0; left = left.filter((i) => !has(done, 0, i))) {
    const ready = left.filter((i) => within(before, i * words, done, 0, words));
    if (ready.length === 0) throw new Error(`the orders of ${left.map((i) => items[i]!.id).join(', ')} form a circle`);
    for (const i of ready) put(done, 0, i);
    order.push(...ready);
  }
  return order;
}

/** Adds the predecessors of predecessors. */
function closeOrders(before: Words, order: readonly number[], words: number): void {
  for (const i of order)
    for (const j of order) if (has(before, i * words, j)) join(before, i * words, before, j * words, words);
}

/** Completes a problem with what follows from its masks. */
function derived(base: Omit<Problem, 'staged' | 'whole'>): Problem {
  const wholeIn = (p: number): number[] => base.order.filter((i) => base.masks[i]!.every((mask) => (mask >> p) & 1));
  return {
    ...base,
    staged: base.order.filter((i) => base.masks[i]!.length > 1),
    whole: base.positions.map((_, p) => wholeIn(p)),
  };
}

/**
 * Numbers the items for the search.
 * @param known position ids in the order of the vocabulary
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
  const bit = (position: string): number => 1 << positions.indexOf(position);
  const words = wordsFor(items.length);
  const before = directOrders(items, words);
  const order = predecessorsFirst(items, before, words);
  closeOrders(before, order, words);
  return derived({
    count: items.length,
    words,
    positions,
    cost: costsOf(positions, change),
    masks: items.map((item) => item.stages.map((stage) => stage.reduce((mask, position) => mask | bit(position), 0))),
    before,
    order,
    start: start === undefined ? undefined : positions.indexOf(start),
  });
}

/** The same problem with some of its items only, orders through the others kept. Item k is `pick[k]` of the whole. */
export function partOf(problem: Problem, pick: readonly number[]): Problem {
  const words = wordsFor(pick.length);
  const before = new Uint32Array(pick.length * words);
  pick.forEach((i, k) => {
    pick.forEach((j, l) => {
      if (has(problem.before, i * problem.words, j)) put(before, k * words, l);
    });
  });
  const number = new Map(pick.map((i, k) => [i, k]));
  return derived({
    count: pick.length,
    words,
    positions: problem.positions,
    cost: problem.cost,
    masks: pick.map((i) => problem.masks[i]!),
    before,
    order: problem.order.flatMap((i) => number.get(i) ?? []),
    start: problem.start,
  });
}
