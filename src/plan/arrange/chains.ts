import { followers } from '../search/reduce.ts';
import type { Problem } from '../search/problem.ts';
import { has, put, type Words } from '../search/sets.ts';

/**
 * The longest chain of items that ask for the same exposure (or place) and between each two of which something with
 * another must be done: the same is arrived at once for each of them.
 */
export type LongestChain = (items: readonly number[]) => number[];

/**
 * Prepares the finding of chains among items, predecessors first.
 * @param keys exposure or place of each item; below 0 for any
 */
export function chainsOf(problem: Problem, keys: Int32Array): LongestChain {
  const { before, words } = problem;
  const after = followers(problem);
  const ofOthers = new Map<number, Words>();
  const others = (key: number): Words => {
    const set = ofOthers.get(key) ?? new Uint32Array(words);
    if (!ofOthers.has(key)) keys.forEach((one, i) => one >= 0 && one !== key && put(set, 0, i));
    ofOthers.set(key, set);
    return set;
  };
  const isApart = (j: number, i: number, between: Words): boolean => {
    for (let w = 0; w < words; w++)
      if ((after[j * words + w]! & before[i * words + w]! & between[w]!) !== 0) return true;
    return false;
  };
  return (items) => {
    if (items.length < 2) return [...items];
    const between = others(keys[items[0]!]!);
    const chains = new Map<number, number[]>();
    for (const i of items) {
      let best: number[] = [];
      for (const [j, chain] of chains)
        if (chain.length > best.length && has(before, i * words, j) && isApart(j, i, between)) best = chain;
      chains.set(i, [...best, i]);
    }
    return [...chains.values()].reduce((a, b) => (b.length > a.length ? b : a));
  };
}
