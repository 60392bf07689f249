import { tableKinds } from '../tables.ts';
import type { TableName } from '../content.ts';
import type { At } from '../faults.ts';
import { manoeuvresOf, type Rule } from './rule.ts';

type Named = { id: string; at: At };

/** An id belongs to one entry of its noun. */
export const uniqueIds: Rule = {
  name: 'duplicate-id',
  description: 'An id is unique within its noun: pages, forms and records are found by it.',
  check(content, report) {
    const once = (noun: string, entries: Named[]): void => {
      const first = new Map<string, At>();
      for (const { id, at } of entries) {
        const before = first.get(id);
        if (before === undefined) first.set(id, at);
        else
          report(
            at,
            `The ${noun} "${id}" is already written at ${before.file}:${before.line}. Ids are unique within a noun; rename or remove one.`,
          );
      }
    };
    const manoeuvres = manoeuvresOf(content);
    once(
      'manoeuvre',
      manoeuvres.map((one) => ({ id: one.value.id, at: one.attribute('id') })),
    );
    once(
      'record',
      manoeuvres.flatMap((one) =>
        one.value.records.map(({ id }, index) => ({ id, at: one.recordAttribute(index, 'id') })),
      ),
    );
    for (const name of Object.keys(tableKinds) as TableName[]) {
      once(
        tableKinds[name].noun,
        content.tables[name].map((entry) => ({ id: entry.value.id, at: entry.at(['id']) })),
      );
    }
  },
};
