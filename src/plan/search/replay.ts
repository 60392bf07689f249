import { doAllIn, isReady, type Move } from './moves.ts';
import type { Problem } from './problem.ts';
import { has, put, type Words } from './sets.ts';

/** What became of a problem's items when the patient was moved along a path. */
export interface Replay {
  done: Words;
  /** Tick of the path at which each item was done; Infinity when it never became possible. */
  when: number[];
}

/** Three ticks a move: where an item of several stages begins, that item, where it ends. */
const ticks = 3;

/**
 * Moves the patient along a path and does all that becomes possible.
 * @param numberOf the problem's number of an item named by the path, if it has it
 */
export function replay(
  problem: Problem,
  path: readonly Move[],
  numberOf: (item: number) => number | undefined,
): Replay {
  const done = new Uint32Array(problem.words);
  const when = new Array<number>(problem.count).fill(Infinity);
  const mark = (tick: number): void => {
    for (let i = 0; i < problem.count; i++) if (when[i] === Infinity && has(done, 0, i)) when[i] = tick;
  };
  path.forEach((move, m) => {
    const first = move.via[0];
    const item = move.item === undefined ? undefined : numberOf(move.item);
    if (first !== undefined) doAllIn(problem, first, done, 0);
    mark(m * ticks);
    if (item !== undefined && isReady(problem, item, done, 0)) put(done, 0, item);
    mark(m * ticks + 1);
    doAllIn(problem, move.to, done, 0);
    mark(m * ticks + 2);
  });
  return { done, when };
}
