import { z } from 'zod';
import { cardSet } from './card-set.ts';
import { clinicEdition } from './clinic.ts';
import { version } from './common.ts';
import { evidence } from './evidence.ts';
import { formDefinition } from './form-definition.ts';
import { guide } from './guide.ts';
import { priority } from './priority.ts';
import { protocol } from './protocol.ts';
import { scale } from './scale.ts';
import { source } from './source.ts';
import { value } from './value.ts';
import { examinerPlace, exposure, instrument, landmark, position, system, tool } from './vocabulary.ts';

/** The whole content, read, checked and linked: the one value that every output is made from. */
export const library = z.strictObject({
  /** Version of the library: package.json's. */
  version,
  /** SHA-256 of the canonical JSON of everything below, as hex. */
  hash: z.string().regex(/^[0-9a-f]{64}$/),
  systems: z.array(system),
  /** In order of examination. */
  protocols: z.array(protocol),
  guides: z.array(guide),
  positions: z.array(position),
  exposures: z.array(exposure),
  instruments: z.array(instrument),
  examinerPlaces: z.array(examinerPlace),
  landmarks: z.array(landmark),
  tools: z.array(tool),
  /** What is kept first when there is too little time, the most important first. */
  priorities: z.array(priority),
  values: z.array(value),
  scales: z.array(scale),
  evidence: z.array(evidence),
  sources: z.array(source),
  cardSets: z.array(cardSet),
  forms: z.array(formDefinition),
  /** Outside the hash: an edition changes nothing of what is shared. */
  clinics: z.array(clinicEdition),
  /** The clinic whose edition this is; none for the shared library. */
  clinic: clinicEdition.optional(),
});
export type Library = z.infer<typeof library>;
