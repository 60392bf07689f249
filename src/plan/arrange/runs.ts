import { isReady } from '../search/moves.ts';
import { bitCount, put, type Words } from '../search/sets.ts';
import { nowhere, type Tasks } from './tasks.ts';

/** An item in its place on the sheet, with the position number of each stage. */
export interface Placed {
  item: number;
  positions: number[];
}

/** The beginning of a sheet. */
export interface Draft {
  visit: number;
  /** What is uncovered, where the examiner stands and what was in hand last; `nowhere` before the first. */
  exposure: number;
  place: number;
  tools: number;
  done: Words;
  count: number;
  /** Packed cost so far: changes of exposure, moves of the examiner, changes of instruments, departures from page order. */
  cost: number;
  last: { placed: Placed; before: Draft['last'] } | undefined;
}

const orderUnit = 1;
const toolUnit = 2 ** 18;
/** Cost of one move of the examiner. */
export const placeUnit = 2 ** 27;
/** Cost of one change of what is uncovered; everything else put together costs less. */
export const exposureUnit = 2 ** 36;

/** Changes of exposure and moves of the examiner in a packed cost. */
export const changesIn = (cost: number): number => Math.floor(cost / exposureUnit);
export const movesIn = (cost: number): number => Math.floor((cost % exposureUnit) / placeUnit);

/** An empty sheet. */
export function emptyDraft({ problem }: Tasks): Draft {
  const done = new Uint32Array(problem.words);
  return { visit: 0, exposure: nowhere, place: nowhere, tools: nowhere, done, count: 0, cost: 0, last: undefined };
}

/** How many items that stand before this one on the page are still to do. */
function passedOver(item: number, done: Words): number {
  const last = item >> 5;
  let count = item;
  for (let w = 0; w < last; w++) count -= bitCount(done[w]!);
  return count - bitCount(done[last]! & ((1 << (item & 31)) - 1));
}

/** Adds an item to a draft, in place. */
export function place(tasks: Tasks, draft: Draft, placed: Placed): void {
  const { item } = placed;
  const exposure = tasks.exposure[item]!;
  const at = tasks.place[item]!;
  const tools = tasks.tools[item]!;
  draft.cost += orderUnit * passedOver(item, draft.done);
  if (draft.exposure !== nowhere && draft.exposure !== exposure) draft.cost += exposureUnit;
  if (at !== nowhere && draft.place !== nowhere && draft.place !== at) draft.cost += placeUnit;
  if (tools !== nowhere && draft.tools !== nowhere && draft.tools !== tools) draft.cost += toolUnit;
  draft.exposure = exposure;
  if (at !== nowhere) draft.place = at;
  if (tools !== nowhere) draft.tools = tools;
  draft.count += 1;
  put(draft.done, 0, item);
  draft.last = { placed, before: draft.last };
}

/**
 * Does all that becomes possible in the visit without uncovering anything else and without a move of the examiner:
 * doing it now never adds a change later. Same instrument first, then page order.
 */
export function doRun(tasks: Tasks, draft: Draft, exposure: number, at: number): void {
  const candidates = tasks.here[draft.visit]?.[exposure] ?? [];
  const where = at === nowhere ? draft.place : at;
  for (let item = nextIn(tasks, draft, candidates, where); item >= 0; item = nextIn(tasks, draft, candidates, where))
    place(tasks, draft, { item, positions: positionsIn(tasks, item, draft.visit) });
}

/** Whether a place (or instruments) asked for is the one there is; `nowhere` asks for none. */
const agree = (asked: number, there: number): boolean => asked === nowhere || asked === there;

/** The first item ready without a move, on the page, of those that keep the instruments in hand if there are any; -1 for none. */
function nextIn(tasks: Tasks, draft: Draft, candidates: readonly number[], where: number): number {
  let first = -1;
  let inHand = -1;
  for (const item of candidates) {
    if (!agree(tasks.place[item]!, where) || !isReady(tasks.problem, item, draft.done, 0)) continue;
    if (first < 0 || item < first) first = item;
    if (inHand >= 0 && item > inHand) continue;
    if (draft.tools === nowhere || agree(tasks.tools[item]!, draft.tools)) inHand = item;
  }
  return inHand < 0 ? first : inHand;
}

function positionsIn({ problem, visits }: Tasks, item: number, visit: number): number[] {
  const position = visits[visit]?.position ?? 0;
  return (problem.masks[item] ?? []).map(() => position);
}

/** Goes on to the end of the item that bridges visits, and does what is possible there with the same exposure. */
export function across(
  tasks: Tasks,
  draft: Draft,
  { item, stages }: { item: number; stages: readonly number[] },
): void {
  draft.visit = stages.at(-1) ?? draft.visit;
  place(tasks, draft, { item, positions: stages.map((visit) => tasks.visits[visit]?.position ?? 0) });
  doRun(tasks, draft, draft.exposure, nowhere);
}

/** Every place from which a run of some items can begin; empty when nothing is ready. */
export function placesOfRun(tasks: Tasks, draft: Pick<Draft, 'place' | 'done'>, items: readonly number[]): number[] {
  const places: number[] = [];
  for (const item of items) {
    if (!isReady(tasks.problem, item, draft.done, 0)) continue;
    const at = tasks.place[item] === nowhere ? draft.place : tasks.place[item]!;
    if (!places.includes(at)) places.push(at);
  }
  return places;
}

/** The items of a draft in their order. */
export function placedOf(draft: Draft): Placed[] {
  const steps: Placed[] = [];
  for (let { last } = draft; last !== undefined; last = last.before) steps.push(last.placed);
  return steps.reverse();
}
