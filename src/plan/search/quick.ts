import type { Bound } from './cover-bound.ts';
import { doAllIn, isReady, stageWays, type Move, type Way } from './moves.ts';
import type { Problem } from './problem.ts';
import { put, sizeOf, type Words } from './sets.ts';

/** A path that does everything, with its packed cost. */
export interface Complete {
  path: Move[];
  cost: number;
}

/** A path on its way. */
interface Beginning {
  position: number;
  done: Words;
  cost: number;
  promise: number;
  path: readonly Move[];
}

function extended(problem: Problem, bound: Bound, from: Beginning | undefined, move: Move, cost: number): Beginning {
  const done = from === undefined ? new Uint32Array(problem.words) : from.done.slice();
  if (move.item !== undefined) put(done, 0, move.item);
  doAllIn(problem, move.to, done, 0);
  const promise = cost + bound(move.to, done, 0);
  return { position: move.to, done, cost, promise, path: [...(from?.path ?? []), move] };
}

function nextOnes(problem: Problem, bound: Bound, ways: Way[][][], from: Beginning): Beginning[] {
  const count = problem.positions.length;
  const changes = problem.positions.map((_, to) => ({ to, via: [], cost: problem.cost[from.position * count + to]! }));
  const staged = problem.staged.flatMap((i) => (isReady(problem, i, from.done, 0) ? ways[i]![from.position]! : []));
  return [...changes, ...staged]
    .map((move) => extended(problem, bound, from, move, from.cost + move.cost))
    .filter((next) => next.done.some((word, w) => word !== from.done[w]));
}

/**
 * A good path, not always the best: of all beginnings that have done equally many items the `width` most promising are kept.
 * @param begun moves already made; none by default
 */
export function quickPath(problem: Problem, bound: Bound, width: number, begun: readonly Move[] = []): Complete {
  const ways = stageWays(problem);
  const byCount: Beginning[][] = Array.from({ length: problem.count + 1 }, () => []);
  for (const one of beginnings(problem, bound, begun)) byCount[sizeOf(one.done)]!.push(one);
  for (const level of byCount.slice(0, -1))
    for (const one of mostPromising(level, width))
      for (const next of nextOnes(problem, bound, ways, one)) byCount[sizeOf(next.done)]!.push(next);
  const [best] = mostPromising(byCount.at(-1)!, 1);
  if (best === undefined) throw new Error('no order was found');
  return { path: [...best.path], cost: best.cost };
}

function beginnings(problem: Problem, bound: Bound, begun: readonly Move[]): Beginning[] {
  const [first, ...rest] = begun;
  if (first !== undefined)
    return [
      rest.reduce((one, move) => followed(problem, bound, one, move), extended(problem, bound, undefined, first, 0)),
    ];
  return problem.positions.flatMap((_, to) =>
    problem.start === undefined || to === problem.start
      ? [extended(problem, bound, undefined, { to, via: [] }, 0)]
      : [],
  );
}

/** Goes on with a move made for a part of the problem; an item that is not yet ready is left for later. */
function followed(problem: Problem, bound: Bound, one: Beginning, move: Move): Beginning {
  const ready = move.item === undefined || isReady(problem, move.item, one.done, 0);
  const made = ready ? move : { to: move.to, via: [] };
  const stops = made.via.length > 0 ? made.via : [made.to];
  const changes = stops.map((to, k) => problem.cost[(stops[k - 1] ?? one.position) * problem.positions.length + to]!);
  return extended(
    problem,
    bound,
    one,
    made,
    changes.reduce((sum, cost) => sum + cost, one.cost),
  );
}

function mostPromising(level: Beginning[], width: number): Beginning[] {
  const seen = new Set<string>();
  const distinct = ({ position, done }: Beginning): boolean => {
    const key = `${position}:${done.join()}`;
    return !seen.has(key) && seen.add(key).size > 0;
  };
  return level
    .sort((a, b) => a.promise - b.promise)
    .filter(distinct)
    .slice(0, width);
}
