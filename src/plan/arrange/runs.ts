import { isReady } from '../search/moves.ts';
import { has, put, type Words } from '../search/sets.ts';
import type { Tasks } from './tasks.ts';

/** An item in its place on the sheet, with the position number of each stage. */
export interface Placed {
  item: number;
  positions: number[];
}

/** The beginning of a sheet. */
export interface Draft {
  visit: number;
  /** What is uncovered, where the examiner stands and what was in hand last; undefined before the first. */
  exposure: string | undefined;
  place: string | undefined;
  tools: string;
  done: Words;
  count: number;
  /** Packed cost so far: changes of exposure, moves of the examiner, changes of instruments, departures from page order. */
  cost: number;
  last: { placed: Placed; before: Draft['last'] } | undefined;
}

const orderUnit = 1;
const toolUnit = 2 ** 18;
const placeUnit = 2 ** 27;
/** Cost of one change of what is uncovered; everything else put together costs less. */
export const exposureUnit = 2 ** 36;

/** How many items that stand before this one on the page are still to do. */
function passedOver({ problem }: Tasks, item: number, done: Words): number {
  let count = 0;
  for (let i = 0; i < item; i++) if (i < problem.count && !has(done, 0, i)) count++;
  return count;
}

/** Adds an item to a draft, in place. */
export function place(tasks: Tasks, draft: Draft, placed: Placed): void {
  const traits = tasks.traits[placed.item];
  if (traits === undefined) return;
  draft.cost += orderUnit * passedOver(tasks, placed.item, draft.done);
  if (draft.exposure !== undefined && draft.exposure !== traits.exposure) draft.cost += exposureUnit;
  if (traits.place !== undefined && draft.place !== undefined && draft.place !== traits.place) draft.cost += placeUnit;
  if (traits.tools !== '' && draft.tools !== '' && draft.tools !== traits.tools) draft.cost += toolUnit;
  draft.exposure = traits.exposure;
  draft.place = traits.place ?? draft.place;
  draft.tools = traits.tools === '' ? draft.tools : traits.tools;
  draft.count += 1;
  put(draft.done, 0, placed.item);
  draft.last = { placed, before: draft.last };
}

/**
 * Does all that becomes possible in the visit without uncovering anything else and without a move of the examiner:
 * doing it now never adds a change later. Same instrument first, then page order.
 */
export function doRun(tasks: Tasks, draft: Draft, exposure: string, at: string | undefined): void {
  const candidates = tasks.here[draft.visit]?.get(exposure) ?? [];
  const where = at ?? draft.place;
  for (;;) {
    const ready = candidates.filter((item) => {
      const own = tasks.traits[item]?.place;
      return (own === undefined || own === where) && isReady(tasks.problem, item, draft.done, 0);
    });
    const [first] = ready;
    if (first === undefined) return;
    const item = ready.find((one) => inHand(tasks, draft, one)) ?? first;
    place(tasks, draft, { item, positions: positionsIn(tasks, item, draft.visit) });
  }
}

function inHand({ traits }: Tasks, { tools }: Draft, item: number): boolean {
  const own = traits[item]?.tools ?? '';
  return own === '' || tools === '' || own === tools;
}

function positionsIn({ problem, visits }: Tasks, item: number, visit: number): number[] {
  const position = visits[visit]?.position ?? 0;
  return (problem.masks[item] ?? []).map(() => position);
}
