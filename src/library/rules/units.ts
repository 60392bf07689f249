import { UcumLhcUtils } from '@lhncbc/ucum-lhc';
import type { At } from '../faults.ts';
import { manoeuvresOf, type Rule } from './rule.ts';

/** Units can be read by machines. */
export const units: Rule = {
  name: 'unit',
  description: 'Every unit of a record or a value is a valid code of UCUM (Unified Code for Units of Measure).',
  check(content, report) {
    const known = new Map<string, string | undefined>();
    const verify = (unit: string, at: At): void => {
      if (!known.has(unit)) known.set(unit, unitFault(unit));
      const message = known.get(unit);
      if (message !== undefined) report(at, message);
    };
    content.tables.values.forEach((entry) => verify(entry.value.unit, entry.at(['unit'])));
    for (const one of manoeuvresOf(content)) {
      one.value.records.forEach((record, index) => {
        if (record.kind === 'quantity') verify(record.unit, one.recordAttribute(index, 'unit'));
      });
    }
  },
};

/** What is wrong with a unit, in words; nothing when it is a UCUM code. */
export function unitFault(unit: string): string | undefined {
  const result = UcumLhcUtils.getInstance().validateUnitString(unit, true);
  if (result.status === 'valid') return undefined;
  const near = result.suggestions?.[0]?.units[0]?.[0];
  const hint = near === undefined ? '' : ` Did you mean "${near}"?`;
  return `unit "${unit}" is not a UCUM code.${hint} Examples: cm, mm[Hg], Cel, deg, /min, %, 1 for a count.`;
}
