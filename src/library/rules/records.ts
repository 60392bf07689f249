import type { Content, ManoeuvreDraft } from '../content.ts';
import { manoeuvresOf, type Rule } from './rule.ts';

type Tell = Parameters<Rule['check']>[1];

/** Fields make sense as they stand. */
export const records: Rule = {
  name: 'record',
  description:
    'An examination records something; ranges run upwards, units are those of the value shown beside, options differ, and what is called normal is one of the options.',
  check(content, report) {
    for (const one of manoeuvresOf(content)) {
      const { id, scope, records: fields } = one.value;
      if (scope !== 'preparation' && fields.length === 0)
        report(one.attribute('id'), `${id} records nothing. Write at least one <Record … /> before </Manoeuvre>.`);
      fields.forEach((_, index) => {
        checkField(one, index, report);
        checkUnit(one, index, content, report);
      });
    }
  },
};

/** The normal limit is printed beside the field: in another unit it would mislead. */
function checkUnit(one: ManoeuvreDraft, index: number, { tables }: Content, report: Tell): void {
  const field = one.value.records[index];
  if (field?.kind !== 'quantity') return;
  const value = tables.values.find((entry) => entry.value.id === field.value)?.value;
  if (value === undefined || value.unit === field.unit) return;
  report(
    one.recordAttribute(index, 'unit'),
    `"${field.id}" is recorded in "${field.unit}", but its value "${value.id}" is given in "${value.unit}". Use one unit.`,
  );
}

function checkField(one: ManoeuvreDraft, index: number, report: Tell): void {
  const field = one.value.records[index];
  const at = (name: string): ReturnType<ManoeuvreDraft['recordAttribute']> => one.recordAttribute(index, name);
  if (field?.kind === 'quantity' && field.min >= field.max) {
    report(at('min'), `The range of "${field.id}" runs from ${field.min} to ${field.max}; min must be below max.`);
  }
  if (field?.kind === 'choice') {
    if (new Set(field.options).size < field.options.length)
      report(at('options'), `"${field.id}" offers the same option twice.`);
    if (field.normal !== undefined && !field.options.includes(field.normal)) {
      report(
        at('normal'),
        `normal "${field.normal}" of "${field.id}" is not one of its options: ${field.options.join('; ')}.`,
      );
    }
  }
  if (field?.code !== undefined && field.codeDisplay === undefined) {
    report(
      at('code'),
      `"${field.id}" has a LOINC code without its official name. Write codeDisplay="…" with LOINC's unedited name, or leave the code out.`,
    );
  }
}
