import type { Manoeuvre } from '../../schemas/manoeuvre.ts';

/** The entry that closes every run sheet. */
const closing = 'finish-and-explain';

/**
 * Orders that hold by rule, by id: preparation opens the sheet, `finish-and-explain` closes it,
 * and a sensitive examination comes last among what can only be done in the same positions.
 */
export function deriveOrders(manoeuvres: readonly Manoeuvre[]): Map<string, string[]> {
  const opening = manoeuvres.filter((one) => one.scope === 'preparation' && one.id !== closing).map(({ id }) => id);
  return new Map(manoeuvres.map((one) => [one.id, orderOf(one, opening, manoeuvres)]));
}

function orderOf(one: Manoeuvre, opening: string[], all: readonly Manoeuvre[]): string[] {
  if (one.id === closing) return all.map(({ id }) => id).filter((id) => id !== closing);
  if (one.scope === 'preparation') return [];
  return [...opening, ...(one.sensitive ? beforeSensitive(one, all) : [])];
}

function beforeSensitive(one: Manoeuvre, all: readonly Manoeuvre[]): string[] {
  const own = new Set(one.stages.flat());
  const within = (other: Manoeuvre): boolean => other.stages.flat().every((position) => own.has(position));
  return all.filter((other) => !other.sensitive && other.scope !== 'preparation' && within(other)).map(({ id }) => id);
}

/** A cycle among orders, as ids with the first repeated at the end; undefined when there is none. */
export function findCycle(after: ReadonlyMap<string, readonly string[]>): string[] | undefined {
  const done = new Set<string>();
  for (const id of after.keys()) {
    const cycle = walk(id, [], after, done);
    if (cycle !== undefined) return cycle;
  }
  return undefined;
}

function walk(
  id: string,
  path: string[],
  after: ReadonlyMap<string, readonly string[]>,
  done: Set<string>,
): string[] | undefined {
  if (path.includes(id)) return [...path.slice(path.indexOf(id)), id];
  if (done.has(id)) return undefined;
  for (const before of after.get(id) ?? []) {
    const cycle = walk(before, [...path, id], after, done);
    if (cycle !== undefined) return cycle;
  }
  done.add(id);
  return undefined;
}
