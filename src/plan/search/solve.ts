import { bestFirst, type Halt } from './best-first.ts';
import { coverBound, departuresOf, type Bound, type Departures } from './cover-bound.ts';
import { backbone, missing } from './grow.ts';
import type { Move } from './moves.ts';
import { costAbove, partOf, secondsOf, type Problem } from './problem.ts';
import { quickPath, type Complete } from './quick.ts';
import { shapingItems } from './reduce.ts';
import { replay } from './replay.ts';
import { mostItems, smallTable, type SmallTable } from './small-table.ts';

/** How the patient is moved. */
export interface Solution {
  /** Moves in order; the first puts the patient into the first position. */
  path: Move[];
  /** Seconds of position changes. */
  seconds: number;
  /** No order takes fewer seconds than this; equal to `seconds` when the least is proven. */
  bound: number;
}

/** Says whether time has run out. */
export type Late = () => boolean;

/** The larger of two bounds, times a weight; the small table holds the first items of the problem. */
function boundOf(problem: Problem, departures: Departures, table: SmallTable, weight: number): Bound {
  const cover = coverBound(problem, departures);
  return (position, done, at) => weight * Math.max(cover(position, done, at), table(position, done[at]!));
}

const renumbered = (path: readonly Move[], pick: readonly number[]): Move[] =>
  path.map((move) => (move.item === undefined ? move : { ...move, item: pick[move.item]! }));

/** What growing a part of the problem led to. */
interface Grown {
  complete: Complete | undefined;
  /** Packed cost that no path undercuts (of use with weight 1 only). */
  bound: number;
  /** The items of the last part, and the last path found for one. */
  part: number[];
  last: Move[];
}

/**
 * Solves a part of the items exactly. When the patient, moved along its path, can have everything else done too, the
 * path is best for the whole, since more items never cost less. Otherwise the items that show why not join the part.
 * @param weight above 1 the search is hasty: a path costs at most that many times the least
 */
function grow(whole: Problem, departures: Departures, halt: Halt, weight: number, begun = backbone(whole)): Grown {
  let table: SmallTable | undefined;
  const grown: Grown = { complete: undefined, bound: 0, part: begun, last: [] };
  for (;;) {
    const { part } = grown;
    const some = partOf(whole, part);
    table ??= smallTable(partOf(whole, part.slice(0, mostItems)));
    const found = bestFirst(some, boundOf(some, departures, table, weight), halt);
    grown.bound = Math.max(grown.bound, found.cost);
    if (found.path === undefined) return grown;
    grown.last = renumbered(found.path, part);
    const inWhole = replay(whole, grown.last, (item) => item);
    const more = missing(
      whole,
      part,
      replay(some, found.path, (item) => item),
      inWhole,
    );
    if (more.length === 0) return { ...grown, complete: { path: grown.last, cost: found.cost } };
    if (part.length < mostItems) table = undefined;
    grown.part = [...part, ...more];
  }
}

/** How far a hasty search may be from the least; and how many beginnings the last resort keeps. */
const hastyWeights = [6, 2.5, 1.6, 1.25];
const beamWidth = 48;

/**
 * The path of least seconds, then of fewest changes.
 * @param late says when to stop proving; then the best path found is returned with the bound proven so far
 * @param veryLate says when to stop looking for a better one
 */
export function solve(problem: Problem, late: Late, veryLate: Late): Solution {
  if (problem.count === 0) return { path: [], seconds: 0, bound: 0 };
  const shaping = shapingItems(problem);
  const whole = partOf(problem, shaping);
  const departures = departuresOf(whole);
  const proof = grow(whole, departures, { late }, 1);
  const { path, cost } = proof.complete ?? goodEnough(whole, departures, proof, veryLate);
  return { path: renumbered(path, shaping), seconds: secondsOf(cost), bound: secondsOf(proof.bound) };
}

/**
 * A path of at most so many seconds: quicker than the path of least seconds where there is none.
 * @returns undefined when there is none, or none was found in time
 */
export function pathWithin(problem: Problem, seconds: number, late: Late): Move[] | undefined {
  if (problem.count === 0) return [];
  const shaping = shapingItems(problem);
  const whole = partOf(problem, shaping);
  const { complete } = grow(whole, departuresOf(whole), { late, limit: costAbove(seconds) }, 1);
  return complete && renumbered(complete.path, shaping);
}

/** The best of hasty searches, of a broad one, and of the last path for a part, gone on with. */
function goodEnough(whole: Problem, departures: Departures, { part, last }: Grown, late: Late): Complete {
  const cover = coverBound(whole, departures);
  const paths = [[], last].map((beginning) => quickPath(whole, cover, beamWidth, beginning));
  for (const weight of hastyWeights) {
    const { complete } = grow(whole, departures, { late }, weight, part);
    if (complete !== undefined) paths.push(complete);
  }
  return paths.reduce((a, b) => (b.cost < a.cost ? b : a));
}
