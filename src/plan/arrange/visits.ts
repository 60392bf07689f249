import type { Move } from '../search/moves.ts';
import type { Problem } from '../search/problem.ts';
import { eachIn } from '../search/sets.ts';

/** One stay of the patient in a position. */
export interface Visit {
  position: number;
  /** An item of several stages that begins at the end of this visit and takes the patient on. */
  bridge?: { item: number; /** Visit of each stage. */ stages: number[] };
  /** True in the middle of such an item: nothing else may stand there. */
  closed: boolean;
}

/** The stays that a path makes. */
export function visitsOf(path: readonly Move[]): Visit[] {
  const visits: Visit[] = [];
  const goTo = (position: number): number => {
    if (visits.at(-1)?.position !== position) visits.push({ position, closed: false });
    return visits.length - 1;
  };
  for (const { to, item, via } of path) {
    if (item === undefined) {
      goTo(to);
      continue;
    }
    const stages = via.map(goTo);
    const first = visits[stages[0] ?? -1];
    if (first !== undefined) first.bridge = { item, stages };
    for (const visit of visits.slice((stages[0] ?? 0) + 1, -1)) visit.closed = true;
  }
  return visits;
}

/**
 * First and last visit in which an item can be done. For one that bridges visits: the visit it ends in, from which on
 * others may follow it, and the visit it begins in, until which others may come before it.
 */
export interface Window {
  first: number;
  last: number;
}

/** Whether an item can be done whole in a visit. */
export function fits(problem: Problem, item: number, visit: Visit): boolean {
  return !visit.closed && (problem.masks[item] ?? []).every((mask) => (mask >> visit.position) & 1);
}

/**
 * The visits in which each item can be done, so that whatever comes before it and after it still can be.
 * @throws Error when an item fits nowhere, which a path from the search never leads to
 */
export function windowsOf(problem: Problem, visits: readonly Visit[]): Window[] {
  const { order, before, words, count } = problem;
  const fixed = new Map(visits.flatMap(({ bridge }) => (bridge === undefined ? [] : [[bridge.item, bridge.stages]])));
  const windows: Window[] = Array.from({ length: count }, () => ({ first: 0, last: visits.length - 1 }));
  for (const item of order) {
    const window = windows[item]!;
    eachIn(before, item * words, words, (j) => (window.first = Math.max(window.first, windows[j]!.first)));
    const from = window.first;
    window.first = fixed.get(item)?.at(-1) ?? visits.findIndex((visit, v) => v >= from && fits(problem, item, visit));
    if (window.first < from) throw new Error(`item ${item} fits into no visit`);
  }
  for (const item of order.toReversed()) {
    const window = windows[item]!;
    const until = window.last;
    window.last = fixed.get(item)?.[0] ?? visits.findLastIndex((visit, v) => v <= until && fits(problem, item, visit));
    eachIn(before, item * words, words, (j) => (windows[j]!.last = Math.min(windows[j]!.last, window.last)));
  }
  return windows;
}
