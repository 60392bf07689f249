import type { ClinicRecord } from '../../../schemas/clinic.ts';
import type { Content } from '../content.ts';
import type { At } from '../faults.ts';
import { manoeuvresOf } from '../rules/rule.ts';
import { unitFault } from '../rules/units.ts';
import type { ClinicCheck, Tell } from './clinic-check.ts';

/** Added records carry the clinic's prefix, stand for nothing that is there already, and make sense as they stand. */
export const added: ClinicCheck = ({ value, at }, content, report) => {
  const taken = sharedRecords(content);
  value.forms.forEach(({ added: additions }, form) => {
    const before = new Set<string>();
    additions.forEach(({ record }, index) => {
      const path = ['forms', form, 'added', index, 'record'];
      const place = (key: string): At => at([...path, key]);
      idFault(record.id, { clinic: value.id, taken, before }, (message) => report(place('id'), message));
      before.add(record.id);
      recordFaults(record, place, report);
    });
  });
};

function sharedRecords(content: Content): Set<string> {
  return new Set(manoeuvresOf(content).flatMap(({ value }) => value.records.map(({ id }) => id)));
}

interface Others {
  clinic: string;
  taken: ReadonlySet<string>;
  before: ReadonlySet<string>;
}

function idFault(id: string, { clinic, taken, before }: Others, report: (message: string) => void): void {
  if (taken.has(id)) report(`The record "${id}" is a shared one and cannot be changed. Add one as "${clinic}-${id}".`);
  else if (!id.startsWith(`${clinic}-`))
    report(`The added record "${id}" lacks the clinic's prefix. Write "${clinic}-${id}".`);
  else if (before.has(id)) report(`The record "${id}" is added twice to this form. Keep one.`);
}

function recordFaults(record: ClinicRecord, at: (key: string) => At, report: Tell): void {
  if (record.kind === 'quantity') {
    const unit = unitFault(record.unit);
    if (unit !== undefined) report(at('unit'), unit);
    if (record.min >= record.max)
      report(
        at('min'),
        `The range of "${record.id}" runs from ${record.min} to ${record.max}; min must be below max. Mend one of them.`,
      );
  }
  if (record.kind !== 'choice') return;
  const { id, options, normal } = record;
  if (new Set(options).size < options.length)
    report(at('options'), `"${id}" offers the same option twice. Keep each option once.`);
  if (normal !== undefined && !options.includes(normal))
    report(at('normal'), `normal "${normal}" of "${id}" is not one of its options: ${options.join('; ')}.`);
}
