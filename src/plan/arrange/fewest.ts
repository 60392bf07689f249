import { isReady } from '../search/moves.ts';
import { emptyQueue, type Queue } from '../search/queue.ts';
import { allOf, put, within, type Words } from '../search/sets.ts';
import { emptyStates, stateOf, type States } from '../search/states.ts';
import { arrivalsLeft, type ArrivalsLeft } from './bound.ts';
import { isClosed, isLossless, type Done, type Station } from './lossless.ts';
import { across, doRun, emptyDraft, type Draft } from './runs.ts';
import { nowhere, type Tasks } from './tasks.ts';

/** What a search for the fewest changes found. */
export interface Fewest {
  /** An order with fewer changes than asked to beat, and as few as can be. */
  draft: Draft | undefined;
  /** Whether no order has fewer than the draft or, without one, than those to beat. */
  isProven: boolean;
}

/** What is counted along a walk. */
export interface Count {
  /** Changes of exposure. */
  exposures: number;
  /** Moves of the examiner; undefined when they do not count. */
  moves?: number;
}

/** Moves of the examiner come to less than one change of exposure. */
const change = 4096;

/** How many states gone through a new one is compared with. */
const looksBack = 50;

interface Search {
  tasks: Tasks;
  /** Whether moves of the examiner count as well. */
  withMoves: boolean;
  /** Cost from which on nothing is looked at. */
  beat: number;
  exposuresLeft: ArrivalsLeft;
  placesLeft: ArrivalsLeft;
  states: States;
  stations: Station[];
  queue: Queue;
  /** States gone through, by visit: one that has done no more for no less is dropped. */
  passed: number[][];
}

/**
 * Best-first search along the walk for fewer changes of exposure, then, if they count, fewer moves of the examiner.
 * @param beat what a sheet at hand has; nothing that comes to as much or more is looked at
 * @param most states to go through before it is given up
 */
export function fewest(tasks: Tasks, beat: Count, most: number): Fewest {
  const search: Search = {
    tasks,
    withMoves: beat.moves !== undefined,
    beat: beat.exposures * change + (beat.moves ?? 0),
    exposuresLeft: arrivalsLeft(tasks, tasks.exposures),
    placesLeft: arrivalsLeft(tasks, tasks.places),
    states: emptyStates(tasks.problem.words),
    stations: [],
    queue: emptyQueue(),
    passed: tasks.visits.map(() => []),
  };
  const all = allOf(tasks.problem.count);
  search.states.done.fill(0, 0, search.states.words);
  reach(search, { visit: 0, exposure: nowhere, place: nowhere }, 0, -1);
  for (let gone = 0, next = search.queue.pop(); next !== undefined; next = search.queue.pop()) {
    const { entry: s, key } = next;
    const { done, cost, rest, words } = search.states;
    if (key > cost[s]! + rest[s]!) continue;
    if (within(all, 0, done, s * words, words)) return { draft: replayed(search, s), isProven: true };
    if (isOutdone(search, s)) continue;
    if (gone++ === most) return { draft: undefined, isProven: false };
    expand(search, s);
  }
  return { draft: undefined, isProven: true };
}

/** The cost of being somewhere else: nothing at the beginning. */
function costOf({ withMoves }: Search, from: Station, to: Station): number {
  const uncover = from.exposure !== nowhere && from.exposure !== to.exposure ? change : 0;
  const moves = withMoves && from.place !== nowhere && from.place !== to.place ? 1 : 0;
  return uncover + moves;
}

/** What is still to come at least, in the units of this search; before anything is done the first arrivals are free. */
function restOf(search: Search, { visit, exposure, place }: Station, s: number): number {
  const { withMoves, exposuresLeft, placesLeft, states } = search;
  const at = s * states.words;
  const isOver = exposure !== nowhere && isClosed(search.tasks, visit, exposure, doneIn(search, s));
  const uncover = exposuresLeft({ visit, now: exposure, isOver }, states.done, at) - (exposure === nowhere ? 1 : 0);
  if (!withMoves) return Math.max(0, uncover) * change;
  const moves = placesLeft({ visit, now: place, isOver: false }, states.done, at) - (place === nowhere ? 1 : 0);
  return Math.max(0, uncover) * change + Math.max(0, moves);
}

const doneIn = ({ states }: Search, s: number): Done => ({ set: states.done, at: s * states.words });

function codeOf({ tasks }: Search, { visit, exposure, place }: Station): number {
  return (visit * (tasks.exposures.of.length + 1) + exposure + 1) * (tasks.places.of.length + 1) + place + 1;
}

/** Takes the scratch set as reached at this cost. */
function reach(search: Search, station: Station, cost: number, parent: number): void {
  const { states, queue, stations } = search;
  const { state, fresh } = stateOf(states, codeOf(search, station));
  if (fresh) {
    stations[state] = station;
    states.rest[state] = restOf(search, station, state);
  } else if (states.cost[state]! <= cost) return;
  states.cost[state] = cost;
  states.parent[state] = parent;
  if (cost + states.rest[state]! < search.beat) queue.push(state, cost + states.rest[state]!, cost);
}

/** Whether a state gone through in the same visit had done as much and could have come here for no more. */
function isOutdone(search: Search, s: number): boolean {
  const { states, passed, stations } = search;
  const here = passed[stations[s]!.visit]!;
  const { done, cost, words } = states;
  for (let k = here.length - 1; k >= Math.max(0, here.length - looksBack); k--) {
    const t = here[k]!;
    if (cost[t]! + costOf(search, stations[t]!, stations[s]!) > cost[s]!) continue;
    if (t !== s && within(done, s * words, done, t * words, words)) return true;
  }
  here.push(s);
  return false;
}

function expand(search: Search, s: number): void {
  const { tasks, states } = search;
  const from = search.stations[s]!;
  const lists = tasks.here[from.visit]!;
  const runs: Station[] = [];
  const isOver = from.exposure === nowhere || isClosed(tasks, from.visit, from.exposure, doneIn(search, s));
  for (let exposure = 0; exposure < lists.length; exposure++) {
    if (exposure === from.exposure && !search.withMoves) continue;
    for (const place of placesHere(search, s, lists[exposure]!)) {
      const run = { visit: from.visit, exposure, place };
      if (isOver && isBest(search, s, run)) {
        go(search, s, run);
        return;
      }
      runs.push(run);
    }
  }
  for (const run of runs) go(search, s, run);
  if (within(tasks.due[from.visit]!, 0, states.done, s * states.words, states.words)) leave(search, s, from);
}

/** Where the examiner can begin a run of some items; the place counts for nothing unless moves do. */
function placesHere({ tasks, states, stations, withMoves }: Search, s: number, items: readonly number[]): number[] {
  const places: number[] = [];
  for (const item of items) {
    if (!isReady(tasks.problem, item, states.done, s * states.words)) continue;
    const own = withMoves ? tasks.place[item]! : nowhere;
    const at = own === nowhere ? stations[s]!.place : own;
    if (!places.includes(at)) places.push(at);
  }
  return places;
}

/** Copies the set of a state to the scratch place and does a run there; returns where that is. */
function ran({ tasks, states, withMoves }: Search, s: number, { visit, exposure, place }: Station): number {
  const at = states.count * states.words;
  states.done.copyWithin(at, s * states.words, (s + 1) * states.words);
  if (exposure !== nowhere) runInto(tasks, states.done, at, { visit, exposure, place: withMoves ? place : undefined });
  return at;
}

/** Does every item of a run, predecessors first; of any place when none is given. */
function runInto(
  { here, place, problem }: Tasks,
  done: Words,
  at: number,
  run: { visit: number; exposure: number; place: number | undefined },
): void {
  for (const item of here[run.visit]![run.exposure]!) {
    const own = place[item]!;
    if (run.place !== undefined && own !== nowhere && own !== run.place) continue;
    if (isReady(problem, item, done, at)) put(done, at, item);
  }
}

function go(search: Search, s: number, run: Station): void {
  ran(search, s, run);
  reach(search, run, search.states.cost[s]! + costOf(search, search.stations[s]!, run), s);
}

/** Whether a run can be made now without loss, when nothing more can be done with what is uncovered. */
function isBest(search: Search, s: number, run: Station): boolean {
  const { exposure, place } = search.stations[s]!;
  if (run.exposure === exposure || (search.withMoves && run.place !== place)) return false;
  const after = { set: search.states.done, at: ran(search, s, run) };
  return isLossless(search.tasks, run, doneIn(search, s), after);
}

/** Goes to the next visit, through the item that bridges them if there is one, and does what is possible there at once. */
function leave(search: Search, s: number, from: Station): void {
  const { tasks, states } = search;
  const bridge = tasks.visits[from.visit]!.bridge;
  if (bridge === undefined) {
    if (from.visit + 1 < tasks.visits.length) go(search, s, { ...from, visit: from.visit + 1 });
    return;
  }
  if (!isReady(tasks.problem, bridge.item, states.done, s * states.words)) return;
  const own = search.withMoves ? tasks.place[bridge.item]! : nowhere;
  const to: Station = {
    visit: bridge.stages.at(-1)!,
    exposure: tasks.exposure[bridge.item]!,
    place: own === nowhere ? from.place : own,
  };
  const at = ran(search, s, { ...from, exposure: nowhere });
  put(states.done, at, bridge.item);
  runInto(tasks, states.done, at, { ...to, place: search.withMoves ? to.place : undefined });
  reach(search, to, states.cost[s]! + costOf(search, from, to), s);
}

/** The order that led to a state. */
function replayed({ tasks, states, stations, withMoves }: Search, last: number): Draft {
  const chain: number[] = [];
  for (let s = last; s >= 0; s = states.parent[s]!) chain.unshift(s);
  const draft = emptyDraft(tasks);
  for (const s of chain.slice(1)) {
    const { visit, exposure, place } = stations[s]!;
    const bridge = tasks.visits[draft.visit]!.bridge;
    if (visit !== draft.visit && bridge !== undefined) across(tasks, draft, bridge);
    draft.visit = visit;
    if (withMoves) doRun(tasks, draft, exposure, place);
    else doWhole(tasks, draft, exposure);
  }
  return draft;
}

/** Does a run of an exposure whatever moves it takes. */
function doWhole(tasks: Tasks, draft: Draft, exposure: number): void {
  for (;;) {
    const before = draft.count;
    doRun(tasks, draft, exposure, nowhere);
    const next = (tasks.here[draft.visit]?.[exposure] ?? []).find((item) =>
      isReady(tasks.problem, item, draft.done, 0),
    );
    if (next !== undefined) doRun(tasks, draft, exposure, tasks.place[next]!);
    if (draft.count === before) return;
  }
}
