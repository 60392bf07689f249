import type { ClinicEdition } from '../../../schemas/clinic.ts';
import type { Library } from '../../../schemas/library.ts';
import { didYouMean } from '../suggest.ts';

/** What is wrong with the setting CLINIC, in a sentence; nothing when it is not set or names a clinic. */
export function clinicFault(known: readonly string[], name: string | undefined): string | undefined {
  if (name === undefined || name === '' || known.includes(name)) return undefined;
  const list =
    known.length === 0
      ? 'There is none yet: write one with npm run new -- clinic ID.'
      : `Clinics: ${known.join(', ')}.`;
  return `CLINIC is "${name}", which is no clinic of content/clinics/.${didYouMean(name, known)} ${list}`;
}

/** The clinic whose edition is asked for; none for the shared library. Throws for one that is not there, with the list. */
export function chosenClinic({ clinics }: Library, name: string | undefined): ClinicEdition | undefined {
  const fault = clinicFault(
    clinics.map(({ id }) => id),
    name,
  );
  if (fault !== undefined) throw new Error(fault);
  return clinics.find(({ id }) => id === name);
}
