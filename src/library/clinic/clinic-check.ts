import type { Clinic } from '../../../schemas/clinic.ts';
import type { Content, Entry } from '../content.ts';
import type { At } from '../faults.ts';

/** Files a fault of an edition. */
export type Tell = (at: At, message: string) => void;

/** Part of what an edition must obey, as far as it shows without the released forms. */
export type ClinicCheck = (entry: Entry<Clinic>, content: Content, report: Tell) => void;
