import { z } from 'zod';
import { id, urgency, version, words } from './common.ts';

const contact = z.strictObject({
  urgency,
  /** Whom to call by day. */
  day: words,
  /** Whom to call out of hours. */
  outOfHours: words,
});

/** A clinic's edition: what it adds to or hides from the shared library. Cautions and red flags cannot be hidden. */
export const clinic = z.strictObject({
  id,
  name: words,
  /** Size its printer takes. */
  paper: z.enum(['a4', 'letter']),
  /** Whom to call for each urgency; blank lines are printed where none is given. */
  contacts: z.array(contact).default([]),
  /** Safeguarding contact. */
  safeguarding: words.optional(),
  /** Contact for a patient at risk of self-harm. */
  selfHarm: words.optional(),
  /** Local note by manoeuvre id. */
  notes: z.record(id, words).default({}),
  /** Manoeuvre ids left off the clinic's forms. */
  hidden: z.array(id).default([]),
  /** Tool ids left out. */
  toolsLeftOut: z.array(id).default([]),
  /** Version of each shared form that the edition is built on. */
  pins: z.record(id, version).default({}),
});
export type Clinic = z.infer<typeof clinic>;
