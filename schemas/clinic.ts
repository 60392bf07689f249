import { z } from 'zod';
import { day, id, recordSides, urgency, version, words } from './common.ts';
import { draftSignOff } from './sign-off.ts';

const contact = z.strictObject({
  urgency,
  /** Whom to call by day; a blank line is printed without one. */
  day: words.optional(),
  /** Whom to call out of hours; a blank line is printed without one. */
  outOfHours: words.optional(),
});
export type ClinicContact = z.infer<typeof contact>;

/** What an edition may hide: a manoeuvre or a record by its id, never a line that keeps a patient safe. */
const hideable = z
  .string()
  .refine(
    (text) => !/\.(caution|flag|sensitive)\b|^(caution|red-?flag)s?$/i.test(text),
    'names a caution or a red flag, and these cannot be hidden. Name a manoeuvre or a record, or take the line out',
  )
  .pipe(id);

const recordHead = {
  /** Begins with the clinic's id and a hyphen; stable for ever, as it becomes a linkId. */
  id,
  /** What the field is called, without side or unit; forms say beside it whose it is, and that it is optional. */
  label: words,
  sides: recordSides.default('none'),
};

/** A field that the clinic adds; always optional. */
export const clinicRecord = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('finding'), ...recordHead, /** The words for normal. */ normal: words }),
  z.strictObject({ kind: z.literal('scale'), ...recordHead, /** Id in content/scales. */ scale: id }),
  z.strictObject({
    kind: z.literal('choice'),
    ...recordHead,
    options: z.array(words).min(2),
    /** Which answer is normal, where one is. */
    normal: words.optional(),
  }),
  z.strictObject({
    kind: z.literal('quantity'),
    ...recordHead,
    /** UCUM unit code. */
    unit: words,
    /** Smallest and largest number that is accepted, in `unit`. */
    min: z.number(),
    max: z.number(),
  }),
  z.strictObject({ kind: z.literal('text'), ...recordHead }),
]);
export type ClinicRecord = z.infer<typeof clinicRecord>;

/** A field added to a shared form. */
const addition = z.strictObject({
  /** Manoeuvre of the shared form that it stands with. */
  manoeuvre: id,
  /** Record of that manoeuvre that it stands behind; behind the last without one. */
  after: id.optional(),
  record: clinicRecord,
});
export type ClinicAddition = z.infer<typeof addition>;

/** The clinic's form made from a shared one, whose version `pins` gives. */
export const clinicForm = z.strictObject({
  /** Id of the shared form. */
  form: id,
  /** Permanent canonical address of the clinic's form: its own, never made from the site's address. */
  url: z.url({ protocol: /^https$/ }),
  /** Version of the clinic's form; its own. */
  version,
  /** Title, where it is not that of the shared form. */
  title: words.optional(),
  /** Role that adapted it, and day of the draft. */
  author: words,
  drafted: day,
  /** Who reviewed and approved the draft; needed before it is released. */
  signOff: draftSignOff.optional(),
  /** Manoeuvres that this form leaves out, beside those that all of the clinic's forms do. */
  hidden: z.array(hideable).default([]),
  /** Records that this form does not ask for. */
  hiddenRecords: z.array(hideable).default([]),
  added: z.array(addition).default([]),
});
export type ClinicForm = z.infer<typeof clinicForm>;

/** A clinic's edition: what it adds to or hides from the shared library. Cautions and red flags cannot be hidden. */
export const clinic = z.strictObject({
  id,
  name: words,
  /** Name for narrow places and beside what is the clinic's own; the whole name without it. */
  short: words.max(24, 'has more than 24 letters').optional(),
  /** Drawing beside this file, of paths alone: text in it would need a font. */
  logo: z
    .string()
    .regex(/^[a-z0-9]+(-[a-z0-9]+)*\.svg$/, 'is not the name of a drawing; write, for example, logo.svg')
    .optional(),
  /** Size its printer takes. */
  paper: z.enum(['a4', 'letter']),
  /** Whom to call for each urgency; blank lines are printed where none is given. */
  contacts: z.array(contact).default([]),
  /** Safeguarding contact. */
  safeguarding: words.optional(),
  /** Contact for a patient at risk of self-harm. */
  selfHarm: words.optional(),
  /** Day on which somebody last rang every contact. */
  contactsChecked: day.optional(),
  /** Local note by manoeuvre id. */
  notes: z.record(id, words).default({}),
  /** Local orders: each manoeuvre comes after another when both are done. */
  order: z.array(z.strictObject({ manoeuvre: id, after: id })).default([]),
  /** Manoeuvre ids left off all of the clinic's forms. */
  hidden: z.array(hideable).default([]),
  /** Tool ids left out. */
  toolsLeftOut: z.array(id).default([]),
  /** Version of each shared form that the edition is built on. */
  pins: z.record(id, version).default({}),
  /** The clinic's own forms. */
  forms: z.array(clinicForm).default([]),
});
export type Clinic = z.infer<typeof clinic>;

/** A clinic with the text of its logo, as the Library holds it. */
export const clinicEdition = clinic.extend({ /** SVG. */ drawing: words.optional() });
export type ClinicEdition = z.infer<typeof clinicEdition>;
