import type { Problem } from './problem.ts';
import type { Replay } from './replay.ts';
import { has } from './sets.ts';

/** How many items a first part may hold before only its backbone is taken. */
const smallEnough = 16;

/** The items to begin with: those of several stages and one for each position that some item insists on. */
export function backbone(problem: Problem): number[] {
  if (problem.count <= smallEnough) return problem.order;
  const insists = new Map<number, number>();
  for (const i of problem.order) {
    const [mask, ...more] = problem.masks[i]!;
    if (more.length === 0 && (mask! & (mask! - 1)) === 0 && !insists.has(mask!)) insists.set(mask!, i);
  }
  const start = [...problem.staged, ...insists.values()];
  return start.length > 0 ? start : problem.order.slice(0, 1);
}

/**
 * Items that show why the best path for a part does not serve the whole. Every first item left undone is traced back:
 * where the part holds it already, to what the part did not know it waits for.
 * @param part the items that the path was found for
 * @param inPart when the path does each of them
 * @param inWhole when it does each item of the whole
 */
export function missing(problem: Problem, part: readonly number[], inPart: Replay, inWhole: Replay): number[] {
  const planned = new Map(part.map((i, k) => [i, inPart.when[k]!]));
  const waitsFor = (i: number): number[] => problem.order.filter((j) => has(problem.before, i * problem.words, j));
  const culprit = (i: number): number => {
    const tick = planned.get(i);
    if (tick === undefined) return i;
    const late = waitsFor(i).filter((j) => inWhole.when[j]! > tick);
    const unknown = late.filter((j) => !planned.has(j));
    const choice = unknown.length > 0 ? unknown : late;
    return culprit(choice.reduce((a, b) => (inWhole.when[b]! > inWhole.when[a]! ? b : a)));
  };
  const undone = problem.order.filter((i) => inWhole.when[i] === Infinity);
  const first = undone.filter((i) => !undone.some((j) => has(problem.before, i * problem.words, j)));
  return [...new Set(first.map(culprit))];
}
