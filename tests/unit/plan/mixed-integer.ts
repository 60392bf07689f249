import loadHighs from 'highs';
import type { Manoeuvre } from '../../../schemas/manoeuvre.ts';
import type { PlanItem } from '../../../src/plan/search/problem.ts';
import { present } from '../../fixtures/present.ts';

type Change = (from: string, to: string) => number;

/** What is to be solved: as the planner is given it. */
export interface Model {
  items: readonly PlanItem[];
  positions: readonly string[];
  change: Change;
  start?: string | undefined;
}

/** What the solver says. */
export interface Answer {
  status: string;
  /** Seconds of the best order it found; Infinity for none. */
  seconds: number;
}

/** The HiGHS solver of mixed-integer programs (https://highs.dev), which knows nothing of the planner. */
export const highs = await loadHighs();

/**
 * Solves a request as a mixed-integer program: which position the patient is in at each slot of time, and at which slot
 * each item begins. Written apart from the planner; only the meaning of orders and stages is shared.
 * @param most seconds that some order is known to take: it bounds the slots, and a better order needs no more of them
 */
export const leastByProgram = (model: Model, most: number, timeLimit = 60): Answer =>
  solveProgram(programOf(model, slotsFor(model, most)), timeLimit);

/** Solves a program in so many seconds, about. */
export function solveProgram(program: string, timeLimit: number): Answer {
  const { Status, ObjectiveValue } = highs.solve(program, { time_limit: timeLimit, output_flag: false });
  return { status: Status, seconds: Number.isFinite(ObjectiveValue) ? Math.round(ObjectiveValue) : Infinity };
}

/** Slots that an order of so many seconds can need: one more than its changes, and one for each further stage. */
export function slotsFor({ items, positions, change }: Model, most: number): number {
  const changes = positions.flatMap((from) => positions.filter((to) => to !== from).map((to) => change(from, to)));
  const stages = items.reduce((sum, item) => sum + item.stages.length - 1, 0);
  return 1 + Math.floor(most / Math.max(1, Math.min(...changes, Infinity))) + stages;
}

const range = (from: number, until: number): number[] =>
  Array.from({ length: Math.max(0, until - from) }, (_, i) => from + i);

/** The program in the text form that the solver reads (CPLEX LP). Only positions and staged items need be whole. */
export function programOf(model: Model, slots: number): string {
  const rows = [...walkRows(model, slots), ...itemRows(model, slots), ...togetherRows(model.items, slots)];
  const binaries = [
    ...range(0, slots).flatMap((t) => model.positions.map((_, p) => at(t, p))),
    ...model.items.flatMap((item, i) => (item.stages.length > 1 ? startsOf(item, slots).map((t) => begun(i, t)) : [])),
  ];
  const costs = costTerms(model, slots).join('\n + ');
  return `Minimize\n ${costs === '' ? `0 ${at(0, 0)}` : costs}\nSubject To\n ${rows.join('\n ')}\nBinary\n ${binaries.join('\n ')}\nEnd\n`;
}

const at = (t: number, p: number): string => `x${t}_${p}`;
const move = (t: number, p: number, q: number): string => `z${t}_${p}_${q}`;
/** 1 once an item has begun, in this slot or before. */
const begun = (i: number, t: number): string => `y${i}_${t}`;
const startsOf = ({ stages }: PlanItem, slots: number): number[] => range(0, slots - stages.length + 1);

function costTerms({ positions, change }: Model, slots: number): string[] {
  const pairs = positions.flatMap((from, p) =>
    positions.flatMap((to, q) => (p === q ? [] : [{ p, q, seconds: change(from, to) }])),
  );
  return range(0, slots - 1).flatMap((t) => pairs.map(({ p, q, seconds }) => `${seconds} ${move(t, p, q)}`));
}

/**
 * The patient is in one position at each slot, or gone at the end, and moves from one to the next. Nobody stays from slot
 * to slot but for two stages in the same position: one slot is enough for all else.
 */
function walkRows({ items, positions, start }: Model, slots: number): string[] {
  const every = range(0, positions.length);
  const places = range(0, slots).map((t) => `${[...every.map((p) => at(t, p)), gone(t)].join(' + ')} = 1`);
  const moves = range(0, slots - 1).flatMap((t) => [
    ...every.flatMap((p) => [
      `${every.map((q) => move(t, p, q)).join(' + ')} + ${leave(t, p)} - ${at(t, p)} = 0`,
      `${every.map((q) => move(t, q, p)).join(' + ')} - ${at(t + 1, p)} = 0`,
      `${[move(t, p, p), ...spanning(items, slots, t, t + 1).map((terms) => `- (${terms})`)].join(' ')} <= 0`,
    ]),
    `${gone(t)} - ${gone(t + 1)} <= 0`,
  ]);
  return [...places, ...moves.map(open), ...(start === undefined ? [] : [`${at(0, positions.indexOf(start))} = 1`])];
}

const gone = (t: number): string => `g${t}`;
const leave = (t: number, p: number): string => `l${t}_${p}`;

/** Takes the brackets out of a row: the solver's text form has none. */
const open = (row: string): string =>
  row.replace(/- \(([^)]*)\)/g, (_, terms: string) => `- ${terms.replace(' - ', ' + ')}`);

/** The terms that are 1 when an item of several stages is under way from one slot to another. */
function spanning(items: readonly PlanItem[], slots: number, from: number, until: number): string[] {
  return items.flatMap((item, i) =>
    startsOf(item, slots)
      .filter((t) => t <= from && until <= t + item.stages.length - 1)
      .map((t) => begins(i, t)),
  );
}

/** The terms that are 1 when an item begins at a slot. */
const begins = (i: number, t: number): string => (t === 0 ? begun(i, 0) : `${begun(i, t)} - ${begun(i, t - 1)}`);

function itemRows({ items, positions }: Model, slots: number): string[] {
  const number = new Map(items.map(({ id }, i) => [id, i]));
  const before = everythingBefore(items);
  return items.flatMap((item, i) => {
    const starts = startsOf(item, slots);
    const whole = `${begun(i, present(starts.at(-1)))} = 1`;
    const once = starts.slice(1).map((t) => `${begun(i, t - 1)} - ${begun(i, t)} <= 0`);
    const allowed = starts.flatMap((t) =>
      item.stages.map((stage, s) => {
        const places = stage.map((p) => ` - ${at(t + s, positions.indexOf(p))}`).join('');
        return `${begins(i, t)}${places} <= 0`;
      }),
    );
    const orders = directly(item, before).flatMap((id) => orderRows(items, i, present(number.get(id)), slots));
    return [whole, ...once, ...allowed, ...orders];
  });
}

/** What comes before each item, directly or not. */
function everythingBefore(items: readonly PlanItem[]): Map<string, Set<string>> {
  const byId = new Map(items.map((one) => [one.id, one]));
  const known = new Map<string, Set<string>>();
  const find = (item: PlanItem): Set<string> => {
    const found =
      known.get(item.id) ??
      new Set(item.after.flatMap((id) => [id, ...(byId.has(id) ? find(present(byId.get(id))) : [])]));
    known.set(item.id, found);
    return found;
  };
  items.forEach(find);
  return known;
}

/** What comes before an item, without what comes before that anyway. */
function directly(item: PlanItem, before: ReadonlyMap<string, ReadonlySet<string>>): string[] {
  const known = item.after.filter((id) => before.has(id));
  return known.filter((id) => !known.some((other) => other !== id && before.get(other)?.has(id) === true));
}

/** By every slot, an item has begun only if what comes before it has ended. */
function orderRows(items: readonly PlanItem[], i: number, j: number, slots: number): string[] {
  const length = present(items[j]).stages.length - 1;
  return startsOf(present(items[i]), slots).map((t) =>
    t < length ? `${begun(i, t)} = 0` : `${begun(i, t)} - ${begun(j, t - length)} <= 0`,
  );
}

/** Between the stages of an item stands nothing else: each change of slot is of one item at most, a slot within is its own. */
function togetherRows(items: readonly PlanItem[], slots: number): string[] {
  const changes = range(0, slots - 1).map((t) => spanning(items, slots, t, t + 1));
  const within = range(1, slots - 1).flatMap((t) => {
    const inside = spanning(items, slots, t - 1, t + 1);
    return items.flatMap((item, i) =>
      item.stages.length > 1 || inside.length === 0 ? [] : [[begins(i, t), ...inside]],
    );
  });
  return [...changes, ...within].filter((terms) => terms.length > 1).map((terms) => `${terms.join(' + ')} <= 1`);
}

/**
 * The model of some manoeuvres of a library.
 * @param start position of the patient at the start
 */
export function stockModel(
  positions: readonly { id: string }[],
  manoeuvres: readonly Manoeuvre[],
  change: Change,
  start: string | undefined,
): Model {
  const items = manoeuvres.map(({ id, stages, after, derivedAfter }) => ({
    ...{ id, stages },
    after: [...after, ...derivedAfter],
  }));
  const used = new Set([...items.flatMap(({ stages }) => stages.flat()), start]);
  return { items, positions: positions.map(({ id }) => id).filter((id) => used.has(id)), change, start };
}
