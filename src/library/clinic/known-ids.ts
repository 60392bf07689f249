import type { Clinic, ClinicForm } from '../../../schemas/clinic.ts';
import type { Entry } from '../content.ts';
import type { Lookup } from '../rules/known-ids.ts';

/** Looks up every id of shared content that an edition names. */
export function lookClinic({ value, at }: Entry<Clinic>, look: Lookup): void {
  const noted = Object.keys(value.notes);
  const pinned = Object.keys(value.pins);
  look('manoeuvres', noted, (index) => at(['notes', noted[index] ?? '']));
  look('manoeuvres', value.hidden, (index) => at(['hidden', index]));
  look('tools', value.toolsLeftOut, (index) => at(['toolsLeftOut', index]));
  look('forms', pinned, (index) => at(['pins', pinned[index] ?? '']));
  value.order.forEach(({ manoeuvre, after }, index) => {
    look('manoeuvres', [manoeuvre], () => at(['order', index, 'manoeuvre']));
    look('manoeuvres', [after], () => at(['order', index, 'after']));
  });
  value.forms.forEach((form, index) => lookForm(form, ['forms', index], at, look));
}

function lookForm(form: ClinicForm, path: readonly PropertyKey[], at: Entry<Clinic>['at'], look: Lookup): void {
  look('forms', [form.form], () => at([...path, 'form']));
  look('manoeuvres', form.hidden, (index) => at([...path, 'hidden', index]));
  form.added.forEach(({ manoeuvre, record }, index) => {
    const added = [...path, 'added', index];
    look('manoeuvres', [manoeuvre], () => at([...added, 'manoeuvre']));
    if (record.kind === 'scale') look('scales', [record.scale], () => at([...added, 'record', 'scale']));
  });
}
