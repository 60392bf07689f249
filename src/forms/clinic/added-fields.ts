import type { Clinic, ClinicAddition, ClinicRecord } from '../../../schemas/clinic.ts';
import type { FormField, FormItem } from '../../../schemas/form.ts';
import type { Library } from '../../../schemas/library.ts';
import type { Record } from '../../../schemas/record.ts';
import { nameBeside } from '../../library/clinic/names.ts';
import { formFields } from '../form-fields.ts';

/** An item with the fields that the clinic adds to it, each behind the record it names, or at the end. */
export function withAdded(
  library: Library,
  clinic: Clinic,
  item: FormItem,
  added: readonly ClinicAddition[],
): FormItem {
  const fields = added
    .filter(({ manoeuvre }) => manoeuvre === item.manoeuvre)
    .reduce((before, { after, record }) => {
      const own = formFields(library, item.manoeuvre, sharedShape(record, nameBeside(clinic)));
      return insertedBehind(before, own, after);
    }, item.fields);
  return { ...item, fields };
}

function insertedBehind(before: readonly FormField[], own: readonly FormField[], record?: string): FormField[] {
  const last = record === undefined ? before.length - 1 : before.findLastIndex((field) => field.record === record);
  return [...before.slice(0, last + 1), ...own, ...before.slice(last + 1)];
}

/** A clinic's record as the library writes one; its label says whose it is and that it may be left empty. */
function sharedShape(record: ClinicRecord, by: string): Record {
  const label = `${record.label} (${by}, optional)`;
  if (record.kind !== 'finding') return { ...record, label };
  return { ...record, label, normal: [{ type: 'text', text: record.normal }] };
}
