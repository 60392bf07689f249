import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import type { Plan, PlanRequest, PlanStep } from '../../schemas/plan.ts';
import { changeSecondsOf } from './movements.ts';
import { planRequest } from './plan.ts';
import { totalsOf } from './totals.ts';

/**
 * What the same sheet would add up to system by system: each system in its own best order, from where the one before
 * left the patient; what has to wait for another system is done when its own system comes round again.
 */
export function systemBySystem(library: Library, request: PlanRequest, plan: Pick<Plan, 'steps'>): Plan['totals'] {
  const steps: PlanStep[] = [];
  const { pace, start, cannot } = request;
  for (const ids of rounds(library, plan)) {
    const from = steps.at(-1)?.position ?? start;
    const part = { manoeuvres: ids, ...(cannot && { cannot }), ...(from !== undefined && { start: from }) };
    steps.push(...planRequest(library, part).steps);
  }
  return totalsOf(steps, { change: changeSecondsOf(library), pace, start });
}

/** The manoeuvres of the sheet by system, in the order of the library, as often round as their orders ask. */
function rounds(library: Library, { steps }: Pick<Plan, 'steps'>): string[][] {
  const open = new Set(steps.map(({ manoeuvre }) => manoeuvre));
  const found: string[][] = [];
  while (open.size > 0) {
    const before = open.size;
    for (const { manoeuvres } of library.protocols) {
      const ready = readyOf(
        manoeuvres.filter(({ id }) => open.has(id)),
        open,
      );
      for (const id of ready) open.delete(id);
      if (ready.length > 0) found.push(ready);
    }
    if (open.size === before) throw new Error(`${[...open].join(', ')} wait for each other`);
  }
  return found;
}

/** What of one system can be done now: all that waits, directly or not, for nothing in another system. */
function readyOf(own: readonly Manoeuvre[], open: ReadonlySet<string>): string[] {
  let ready = own;
  for (let size = -1; size !== ready.length;) {
    size = ready.length;
    const ids = new Set(ready.map(({ id }) => id));
    const waits = ({ after, derivedAfter }: Manoeuvre): boolean =>
      [...after, ...derivedAfter].some((id) => open.has(id) && !ids.has(id));
    ready = ready.filter((one) => !waits(one));
  }
  return ready.map(({ id }) => id);
}
