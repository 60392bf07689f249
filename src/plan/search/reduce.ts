import type { Problem } from './problem.ts';
import { eachIn, has, put, take, type Words } from './sets.ts';

/** Sets that come after each item, as `before` holds those that come first. */
export function followers(problem: Problem): Words {
  const after = new Uint32Array(problem.before.length);
  const { words } = problem;
  for (let i = 0; i < problem.count; i++) eachIn(problem.before, i * words, words, (j) => put(after, j * words, i));
  return after;
}

/** Whether the set of item j, among the items `left` and `except` apart, is within that of item i. */
function contained(sets: Words, j: number, i: number, left: Words, words: number, except: number): boolean {
  for (let w = 0; w < words; w++) {
    let more = sets[j * words + w]! & left[w]! & ~sets[i * words + w]!;
    if (w === except >> 5) more &= ~(1 << (except & 31));
    if (more !== 0) return false;
  }
  return true;
}

/**
 * Items that shape the order. One of a single stage is left out when another is only possible where this one is, and
 * comes after all that this one waits for and before all that waits for it: then this one can be done beside it, just
 * before or just after, wherever that falls.
 */
export function shapingItems(problem: Problem): number[] {
  const { before, words, masks } = problem;
  const after = followers(problem);
  const left = new Uint32Array(words);
  for (let i = 0; i < problem.count; i++) put(left, 0, i);
  const justBefore = (j: number, i: number): boolean =>
    (masks[i]![0]! & ~masks[j]![0]!) === 0 &&
    contained(before, j, i, left, words, -1) &&
    contained(after, j, i, left, words, i);
  const justAfter = (j: number, i: number): boolean =>
    (masks[i]!.at(-1)! & ~masks[j]![0]!) === 0 &&
    contained(before, j, i, left, words, i) &&
    contained(after, j, i, left, words, -1);
  let kept = [...problem.order];
  for (let size = Infinity; kept.length < size;) {
    size = kept.length;
    for (const j of kept) {
      if (masks[j]!.length > 1) continue;
      if (kept.some((i) => i !== j && has(left, 0, i) && (justBefore(j, i) || justAfter(j, i)))) take(left, 0, j);
    }
    kept = kept.filter((i) => has(left, 0, i));
  }
  return kept;
}
