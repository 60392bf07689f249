import type { PlanItem } from './search/problem.ts';

/** Whether items with more orders than at first take no more seconds of position changes. */
export type IsFree = (items: readonly PlanItem[]) => boolean;

/**
 * The items with further orders, so that those to be left for last come after as many others as can be had for nothing:
 * an order is added only where the orders written allow it and position changes take no longer.
 */
export function leaveForLast(items: readonly PlanItem[], last: readonly string[], isFree: IsFree): PlanItem[] {
  return last.reduce<PlanItem[]>(
    (now, id) => {
      const before = everythingBefore(now);
      const canWaitFor = (other: string): boolean => !last.includes(other) && before.get(other)?.has(id) === false;
      const others = now.map((item) => item.id).filter(canWaitFor);
      return before.has(id) ? putAfter(now, { id, isFree, before, hopeless: new Set() }, others) : now;
    },
    [...items],
  );
}

/** One item to be left for last. */
interface Wish {
  id: string;
  isFree: IsFree;
  /** What comes before each item, directly or not. */
  before: ReadonlyMap<string, ReadonlySet<string>>;
  /** What the item cannot come after for nothing. */
  hopeless: Set<string>;
}

/** Puts an item after all the others if that costs nothing; if not, after as many of each half as it can. */
function putAfter(items: PlanItem[], wish: Wish, others: readonly string[]): PlanItem[] {
  const { id, isFree, hopeless } = wish;
  if (others.length === 0) return items;
  const later = items.map((item) => (item.id === id ? { ...item, after: [...item.after, ...others] } : item));
  if (!others.some((other) => hopeless.has(other)) && isFree(later)) return later;
  const [only, ...more] = others;
  if (only !== undefined && more.length === 0) {
    giveUp(items, wish, only);
    return items;
  }
  const half = Math.ceil(others.length / 2);
  return putAfter(putAfter(items, wish, others.slice(half)), wish, others.slice(0, half));
}

/** The wish cannot come after one item, nor then after any that itself comes after that, or that it could be done beside. */
function giveUp(items: readonly PlanItem[], { before, hopeless }: Wish, id: string): void {
  const refused = items.find((item) => item.id === id);
  for (const item of items)
    if (refused !== undefined && (before.get(item.id)?.has(id) === true || isBeside(refused, item, before)))
      hopeless.add(item.id);
  hopeless.add(id);
}

/** Whether one item could always be done just after another, if it was not done sooner. */
function isBeside(one: PlanItem, other: PlanItem, before: Wish['before']): boolean {
  const [stage, ...more] = one.stages;
  if (stage === undefined || more.length > 0) return false;
  const earlier = before.get(other.id);
  return (
    other.stages.at(-1)?.every((position) => stage.includes(position)) === true &&
    [...(before.get(one.id) ?? [])].every((id) => id === other.id || earlier?.has(id) === true)
  );
}

/** What comes before each item on the sheet, directly or not. */
function everythingBefore(items: readonly PlanItem[]): Map<string, Set<string>> {
  const byId = new Map(items.map((item) => [item.id, item]));
  const known = new Map<string, Set<string>>();
  const find = (item: PlanItem): Set<string> => {
    const found = known.get(item.id) ?? new Set<string>();
    if (known.has(item.id)) return found;
    known.set(item.id, found);
    for (const direct of item.after.flatMap((id) => byId.get(id) ?? [])) {
      found.add(direct.id);
      for (const id of find(direct)) found.add(id);
    }
    return found;
  };
  items.forEach(find);
  return known;
}
