import type { Bound } from './cover-bound.ts';
import { doAllIn, isReady, stageWays, type Move, type Way } from './moves.ts';
import type { Problem } from './problem.ts';
import { emptyQueue, type Queue } from './queue.ts';
import { allOf, put, within } from './sets.ts';
import { emptyStates, plainChange, scratch, stateOf, type States } from './states.ts';

/** When a search stops without a path. */
export interface Halt {
  /** Asked now and then; when it says yes the search stops with the bound it has reached. */
  late: () => boolean;
  /** Packed cost from which on a path is of no use; none by default. */
  limit?: number;
}

/** What a search found: a path of least cost, or, out of time, only a bound. */
export interface Found {
  /** Moves in order; the first puts the patient into the first position. */
  path: Move[] | undefined;
  /** Packed cost of the path; without one, no path costs less than this. */
  cost: number;
}

interface Search {
  problem: Problem;
  bound: Bound;
  states: States;
  queue: Queue;
  ways: Way[][][];
  /** States gone through, by position: a later one that costs no less and has done no more is dropped. */
  passed: number[][];
}

/** Best-first search over (position, what is done) for the least packed cost. */
export function bestFirst(problem: Problem, bound: Bound, { late, limit = Infinity }: Halt): Found {
  const search: Search = {
    problem,
    bound,
    states: emptyStates(problem.words),
    queue: emptyQueue(),
    ways: stageWays(problem),
    passed: problem.positions.map(() => []),
  };
  begin(search);
  const all = allOf(problem.count);
  for (let turn = 0, next = search.queue.pop(); next !== undefined; turn++, next = search.queue.pop()) {
    const { entry: s, key } = next;
    const { done, cost, rest } = search.states;
    if (key >= limit || (turn % 128 === 0 && late())) return { path: undefined, cost: key };
    if (within(all, 0, done, s * problem.words, problem.words)) return { path: pathTo(search, s), cost: cost[s]! };
    if (key > cost[s]! + rest[s]! || isOutdone(search, s)) continue;
    expand(search, s);
  }
  throw new Error('no order was found');
}

function begin(search: Search): void {
  const { problem, states } = search;
  for (let p = 0; p < problem.positions.length; p++) {
    if (problem.start !== undefined && p !== problem.start) continue;
    const at = states.count * problem.words;
    states.done.fill(0, at, at + problem.words);
    doAllIn(problem, p, states.done, at);
    reach(search, p, 0, -1, plainChange);
  }
}

/** Takes the scratch set as reached at this cost. */
function reach(search: Search, position: number, cost: number, parent: number, item: number): void {
  const { states, bound, queue } = search;
  const { state, fresh } = stateOf(states, position);
  if (fresh) states.rest[state] = bound(position, states.done, state * states.words);
  else if (states.cost[state]! <= cost) return;
  states.cost[state] = cost;
  states.parent[state] = parent;
  states.item[state] = item;
  queue.push(state, cost + states.rest[state]!, cost);
}

/** Whether a state gone through before, in the same position, had done as much for no more. Otherwise it goes down as passed. */
function isOutdone({ states, passed, problem }: Search, s: number): boolean {
  const { done, cost, words } = { ...states, words: problem.words };
  const here = passed[states.position[s]!]!;
  for (let k = here.length - 1; k >= 0; k--) {
    const t = here[k]!;
    if (t !== s && cost[t]! <= cost[s]! && within(done, s * words, done, t * words, words)) return true;
  }
  here.push(s);
  return false;
}

function expand(search: Search, s: number): void {
  const { problem, states, ways } = search;
  const from = states.position[s]!;
  const cost = states.cost[s]!;
  const count = problem.positions.length;
  for (let to = 0; to < count; to++) {
    if (to === from || problem.whole[to]!.length === 0) continue;
    const at = scratch(states, s);
    if (doAllIn(problem, to, states.done, at))
      reach(search, to, cost + problem.cost[from * count + to]!, s, plainChange);
  }
  for (const item of problem.staged) {
    if (!isReady(problem, item, states.done, s * problem.words)) continue;
    for (const way of ways[item]![from]!) {
      const at = scratch(states, s);
      put(states.done, at, item);
      doAllIn(problem, way.to, states.done, at);
      reach(search, way.to, cost + way.cost, s, item);
    }
  }
}

function pathTo({ states, ways }: Search, last: number): Move[] {
  const path: Move[] = [];
  for (let s = last; s >= 0; s = states.parent[s]!) path.unshift(moveInto(states, ways, s));
  return path;
}

function moveInto(states: States, ways: Way[][][], s: number): Move {
  const to = states.position[s]!;
  const item = states.item[s]!;
  if (item === plainChange) return { to, via: [] };
  return ways[item]![states.position[states.parent[s]!]!]!.find((way) => way.to === to)!;
}
