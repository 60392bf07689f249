import type { Rule } from './rule.ts';

/** A page is found by its system. */
export const pageName: Rule = {
  name: 'page-name',
  description: 'The file of a protocol is named after its system, and two pages never have the same order.',
  check({ protocols }, report) {
    const orders = new Map<number, string>();
    for (const { value, key } of protocols) {
      if (value.system !== value.id)
        report(
          key(['system']),
          `system "${value.system}" does not match the file's name. Rename the file to ${value.system}.mdx, or write system: ${value.id}.`,
        );
      const other = orders.get(value.order);
      if (other !== undefined)
        report(
          key(['order']),
          `order ${value.order} is already that of "${other}". Give each page its own place in the examination.`,
        );
      orders.set(value.order, value.id);
    }
  },
};
