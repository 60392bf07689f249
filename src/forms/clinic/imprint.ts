import type { ClinicEdition } from '../../../schemas/clinic.ts';
import type { Form, FormImprint } from '../../../schemas/form.ts';

/** A form as a clinic prints it: with its name, logo and contacts, not a word of the form changed. */
export function imprinted(form: Form, clinic: ClinicEdition | undefined): Form {
  return clinic === undefined ? form : { ...form, clinic: imprintOf(clinic) };
}

const printed = [
  'id',
  'name',
  'short',
  'paper',
  'drawing',
  'contacts',
  'safeguarding',
  'selfHarm',
  'contactsChecked',
] as const satisfies readonly (keyof FormImprint)[];

function imprintOf(clinic: ClinicEdition): FormImprint {
  const parts = printed.filter((key) => clinic[key] !== undefined).map((key) => [key, clinic[key]]);
  return Object.fromEntries(parts) as FormImprint;
}
