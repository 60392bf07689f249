import { deriveOrders, findCycle } from '../orders.ts';
import { manoeuvresOf, type Rule } from './rule.ts';

/** Orders can all be kept at once. */
export const orderCycle: Rule = {
  name: 'order-cycle',
  description: 'The orders written in "after" and those that hold by rule never go round in a circle.',
  check(content, report) {
    const drafts = manoeuvresOf(content);
    const derived = deriveOrders(drafts.map(({ value }) => value));
    const after = new Map(drafts.map(({ value }) => [value.id, [...value.after, ...(derived.get(value.id) ?? [])]]));
    const cycle = findCycle(after);
    if (cycle === undefined) return;
    const owner = drafts.find(
      ({ value }, index) => cycle.includes(value.id) && value.after.some((id) => cycle.includes(id)) && index >= 0,
    );
    const at = (owner ?? drafts.find(({ value }) => cycle.includes(value.id)))?.attribute('after');
    if (at)
      report(
        at,
        `The order goes round in a circle: ${cycle.join(' after ')}. Remove one "after". Preparation comes first, finish-and-explain last, and sensitive examinations last in their position, by rule.`,
      );
  },
};
