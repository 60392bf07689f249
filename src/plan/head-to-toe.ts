import type { Library } from '../../schemas/library.ts';
import type { Plan, PlanRequest } from '../../schemas/plan.ts';
import { changeSecondsOf } from './movements.ts';
import type { ChangeSeconds } from './search/problem.ts';
import { select, type Allowed } from './select.ts';
import { stepsOf, type Turn } from './steps.ts';
import { totalsOf } from './totals.ts';

/**
 * What the same sheet would add up to in plain head-to-toe order: page order, orders kept, the patient moved only when
 * the next manoeuvre cannot be done where they are, and then to the nearest position that serves.
 */
export function headToToe(library: Library, request: PlanRequest, plan: Pick<Plan, 'steps'>): Plan['totals'] {
  const onSheet = new Set(plan.steps.map(({ manoeuvre }) => manoeuvre));
  const manoeuvres = inOrder(select(library, request).manoeuvres.filter(({ id }) => onSheet.has(id)));
  const change = changeSecondsOf(library);
  const turns = placed(manoeuvres, request.start ?? firstPosition(manoeuvres), change);
  const timing = { change, pace: request.pace, start: request.start };
  return totalsOf(stepsOf(turns, timing), timing);
}

/** Page order, but nothing before what must come first. */
function inOrder(manoeuvres: readonly Allowed[]): Allowed[] {
  const waiting = [...manoeuvres];
  const order: Allowed[] = [];
  while (waiting.length > 0) {
    const left = new Set(waiting.map(({ id }) => id));
    const next = waiting.findIndex(
      ({ after, derivedAfter }) => ![...after, ...derivedAfter].some((id) => left.has(id)),
    );
    order.push(...waiting.splice(Math.max(0, next), 1));
  }
  return order;
}

/** Where to begin: what can be done anywhere is done where the first of the others is. */
function firstPosition(order: readonly Allowed[]): string {
  const stages = order.flatMap((one) => one.stages);
  const most = Math.max(0, ...stages.map((stage) => stage.length));
  return (stages.find((stage) => stage.length < most) ?? stages[0])?.[0] ?? '';
}

function placed(order: readonly Allowed[], from: string, change: ChangeSeconds): Turn[] {
  let position = from;
  return order.map((manoeuvre) => ({
    manoeuvre,
    positions: manoeuvre.stages.map((stage) => (position = nearest(position, stage, change))),
  }));
}

function nearest(from: string, stage: readonly string[], change: ChangeSeconds): string {
  return stage.reduce((best, to) => (change(from, to) < change(from, best) ? to : best), stage[0] ?? from);
}
