import type { Manoeuvre } from '../../../schemas/manoeuvre.ts';
import { deriveOrders, findCycle } from '../orders.ts';
import { manoeuvresOf } from '../rules/rule.ts';
import type { ClinicCheck } from './clinic-check.ts';

/** A local order contradicts neither the library's nor another of the clinic. */
export const order: ClinicCheck = ({ value, at }, content, report) => {
  const after = ordersOf(manoeuvresOf(content).map((draft) => draft.value));
  value.order.forEach(({ manoeuvre, after: before }, index) => {
    if (!after.has(manoeuvre) || !after.has(before)) return;
    const all = new Map(after).set(manoeuvre, [...(after.get(manoeuvre) ?? []), before]);
    const cycle = findCycle(all);
    if (cycle === undefined) after.set(manoeuvre, all.get(manoeuvre) ?? []);
    else
      report(
        at(['order', index]),
        `"${manoeuvre}" after "${before}" makes the order go round in a circle: ${cycle.join(' after ')}. Take this order out, or turn it round.`,
      );
  });
};

function ordersOf(manoeuvres: readonly Manoeuvre[]): Map<string, string[]> {
  const derived = deriveOrders(manoeuvres);
  return new Map(manoeuvres.map(({ id, after }) => [id, [...after, ...(derived.get(id) ?? [])]]));
}
