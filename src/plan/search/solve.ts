import { bestFirst } from './best-first.ts';
import { coverBound, type Bound } from './cover-bound.ts';
import { backbone, missing } from './grow.ts';
import type { Move } from './moves.ts';
import { partOf, secondsOf, type Problem } from './problem.ts';
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

/** How many beginnings are kept when time has run out and a good path has to do. */
const beamWidth = 64;

/** The larger of two bounds; the small table holds the first items of the problem. */
function boundOf(problem: Problem, table: SmallTable): Bound {
  const cover = coverBound(problem);
  return (position, done, at) => Math.max(cover(position, done, at), table(position, done[at]!));
}

const renumbered = (path: readonly Move[], pick: readonly number[]): Move[] =>
  path.map((move) => (move.item === undefined ? move : { ...move, item: pick[move.item]! }));

/**
 * The path of least seconds, then of fewest changes. A part of the items is solved exactly; when the patient, moved
 * along its path, can have everything else done too, the path is best for the whole, since no item is ever done for
 * less than nothing. Otherwise the items that show why not join the part.
 * @param late says when to stop; then the best path found is returned with the bound proven so far
 */
export function solve(problem: Problem, late: () => boolean): Solution {
  if (problem.count === 0) return { path: [], seconds: 0, bound: 0 };
  const shaping = shapingItems(problem);
  const whole = partOf(problem, shaping);
  let part = backbone(whole);
  let begun: Move[] = [];
  let bound = 0;
  let table: SmallTable | undefined;
  for (;;) {
    const some = partOf(whole, part);
    table ??= smallTable(partOf(whole, part.slice(0, mostItems)));
    const found = bestFirst(some, boundOf(some, table), late);
    bound = Math.max(bound, found.cost);
    if (found.path === undefined) return goodEnough(whole, shaping, begun, bound);
    begun = renumbered(found.path, part);
    const inWhole = replay(whole, begun, (item) => item);
    const more = missing(whole, part, replay(some, found.path, (item) => item), inWhole);
    if (more.length === 0) return solution({ path: begun, cost: found.cost }, shaping, found.cost);
    if (part.length < mostItems) table = undefined;
    part = [...part, ...more];
  }
}

function solution({ path, cost }: Complete, shaping: readonly number[], bound: number): Solution {
  return { path: renumbered(path, shaping), seconds: secondsOf(cost), bound: secondsOf(bound) };
}

/** The better of a broad search and of the last path for a part, gone on with. */
function goodEnough(whole: Problem, shaping: readonly number[], begun: readonly Move[], bound: number): Solution {
  const cover = coverBound(whole);
  const broad = quickPath(whole, cover, beamWidth);
  const continued = begun.length > 0 ? quickPath(whole, cover, beamWidth, begun) : broad;
  return solution(continued.cost < broad.cost ? continued : broad, shaping, bound);
}
