import { equal, type Words } from './sets.ts';

/** What led to a state: a change to its position, or an item of several stages that ends there. */
export const plainChange = -1;

/** The states of a search in flat arrays that grow, found again by position and set. */
export interface States {
  count: number;
  /** Sets of items done; state s starts at `s × words`. The set at `count` is scratch for the next state. */
  done: Words;
  position: Int32Array;
  cost: Float64Array;
  /** Bound on what follows. */
  rest: Float64Array;
  /** State before it; -1 for a first one. */
  parent: Int32Array;
  /** Item of several stages that led here, or `plainChange`. */
  item: Int16Array;
  words: number;
  table: Int32Array;
}

/** An empty store for sets of `words` words. */
export function emptyStates(words: number): States {
  const size = 1024;
  return {
    count: 0,
    done: new Uint32Array(size * words),
    position: new Int32Array(size),
    cost: new Float64Array(size),
    rest: new Float64Array(size),
    parent: new Int32Array(size),
    item: new Int16Array(size),
    words,
    table: new Int32Array(4 * size).fill(-1),
  };
}

function hash({ done, words }: States, at: number, position: number): number {
  let h = Math.imul(position + 1, 0x9e3779b1);
  for (let w = 0; w < words; w++) {
    h = Math.imul(h ^ done[at + w]!, 0x85ebca6b);
    h ^= h >>> 15;
  }
  return h >>> 0;
}

/** Where in the table a state stands or would stand. */
function slotOf(states: States, at: number, position: number): number {
  const { table, done, words } = states;
  let slot = hash(states, at, position) & (table.length - 1);
  for (; table[slot]! >= 0; slot = (slot + 1) & (table.length - 1)) {
    const s = table[slot]!;
    if (states.position[s] === position && equal(done, s * words, done, at, words)) break;
  }
  return slot;
}

/** Copies the set of a state to the scratch place, and returns where that is. */
export function scratch(states: States, from: number): number {
  const at = states.count * states.words;
  states.done.copyWithin(at, from * states.words, (from + 1) * states.words);
  return at;
}

/** The state with the scratch set and this position: an old one, or a new one (`fresh`) with nothing filled in yet. */
export function stateOf(states: States, position: number): { state: number; fresh: boolean } {
  const slot = slotOf(states, states.count * states.words, position);
  if (states.table[slot]! >= 0) return { state: states.table[slot]!, fresh: false };
  const state = states.count++;
  states.table[slot] = state;
  states.position[state] = position;
  if (states.count === states.position.length) growArrays(states);
  if (states.count * 2 > states.table.length) growTable(states);
  return { state, fresh: true };
}

function growArrays(states: States): void {
  const size = 2 * states.position.length;
  const grown = <T extends Words | Float64Array | Int32Array | Int16Array>(to: T, from: T): T => {
    to.set(from);
    return to;
  };
  states.done = grown(new Uint32Array(size * states.words), states.done);
  states.position = grown(new Int32Array(size), states.position);
  states.cost = grown(new Float64Array(size), states.cost);
  states.rest = grown(new Float64Array(size), states.rest);
  states.parent = grown(new Int32Array(size), states.parent);
  states.item = grown(new Int16Array(size), states.item);
}

function growTable(states: States): void {
  states.table = new Int32Array(2 * states.table.length).fill(-1);
  for (let s = 0; s < states.count; s++) states.table[slotOf(states, s * states.words, states.position[s]!)] = s;
}
