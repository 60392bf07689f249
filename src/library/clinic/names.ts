import type { Clinic, ClinicForm } from '../../../schemas/clinic.ts';

/** The clinic's name beside what is its own, and where there is little room. */
export const nameBeside = ({ short, name }: Pick<Clinic, 'short' | 'name'>): string => short ?? name;

/** Title of a clinic's form: its own, or that of the shared form with the clinic's name, so that nobody takes one for the other. */
export const titleOfOwn = (clinic: Pick<Clinic, 'short' | 'name'>, own: ClinicForm, shared: string): string =>
  own.title ?? `${shared} (${nameBeside(clinic)})`;
