import type { PlanItem } from './search/problem.ts';

/**
 * The items with further orders, so that those to be left for last come after as many others as can be had for nothing:
 * an order is added only where the orders written allow it and position changes take no longer.
 * @param seconds least seconds of position changes of items
 */
export function leaveForLast(
  items: readonly PlanItem[],
  last: readonly string[],
  seconds: (items: readonly PlanItem[]) => number,
): PlanItem[] {
  const least = last.length > 0 ? seconds(items) : 0;
  const isFree = (some: readonly PlanItem[]): boolean => seconds(some) === least;
  return last.reduce<PlanItem[]>(
    (now, id) => {
      const after = followers(now, id);
      const others = now.map((item) => item.id).filter((other) => !last.includes(other) && !after.has(other));
      return now.some((item) => item.id === id) ? putAfter(now, id, others, isFree) : now;
    },
    [...items],
  );
}

/** Puts an item after all the others if that costs nothing; if not, after as many of each half as it can. */
function putAfter(
  items: PlanItem[],
  id: string,
  others: readonly string[],
  isFree: (items: readonly PlanItem[]) => boolean,
): PlanItem[] {
  if (others.length === 0) return items;
  const later = items.map((item) => (item.id === id ? { ...item, after: [...item.after, ...others] } : item));
  if (isFree(later)) return later;
  if (others.length === 1) return items;
  const half = Math.ceil(others.length / 2);
  return putAfter(putAfter(items, id, others.slice(half), isFree), id, others.slice(0, half), isFree);
}

/** Everything that comes after an item, directly or not, and the item itself. */
function followers(items: readonly PlanItem[], id: string): Set<string> {
  const found = new Set([id]);
  for (let size = 0; size < found.size;) {
    size = found.size;
    for (const item of items) if (item.after.some((before) => found.has(before))) found.add(item.id);
  }
  return found;
}
