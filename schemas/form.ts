import { z } from 'zod';
import { day, formName, id, recordSides, urgency, version, words } from './common.ts';
import { clinicEdition } from './clinic.ts';
import { signOff, withdrawal } from './sign-off.ts';
import { source } from './source.ts';

/** linkIds are stable for ever: record id, side, detail. */
export const linkId = z.string().regex(/^[a-z0-9]+([.-][a-z0-9]+)*$/, 'is not a linkId');

const option = z.strictObject({
  /** What is stored. */
  code: words,
  /** What is shown. */
  display: words,
  normal: z.boolean(),
});

const common = {
  /** `<record>` or `<record>.right`, `<record>.left`, `<record>.side`. */
  linkId,
  /** Label with its side. */
  label: words,
  /** Label without its side. */
  base: words,
  side: z.enum(['none', 'left', 'right']),
  /** Record that it comes from. */
  record: id,
  /** Manoeuvre that it comes from. */
  manoeuvre: id,
  code: z.string().optional(),
  codeDisplay: words.optional(),
  /** Citation, in words, of the scale or of the normal figure. */
  source: words.optional(),
};

/** One field of a form; plain text only, so that a release is frozen whole. */
export const formField = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('finding'),
    ...common,
    /** The words for normal. */ normal: words,
    /** linkId of the detail line. */ detail: linkId,
    /** linkId of the reason for not examining. */ reason: linkId,
  }),
  z.strictObject({
    kind: z.literal('scale'),
    ...common,
    scale: id,
    scaleTitle: words,
    options: z.array(option).min(2),
  }),
  z.strictObject({ kind: z.literal('choice'), ...common, options: z.array(option).min(2) }),
  z.strictObject({
    kind: z.literal('quantity'),
    ...common,
    /** UCUM. */ unit: words,
    /** Unit as shown. */ unitLabel: words,
    min: z.number(),
    max: z.number(),
    /** Normal limit or range in words. */ normal: words.optional(),
  }),
  z.strictObject({ kind: z.literal('text'), ...common }),
]);
export type FormField = z.infer<typeof formField>;

/** One manoeuvre on the form: its cautions, then its fields. */
export const formItem = z.strictObject({
  manoeuvre: id,
  title: words,
  sides: recordSides,
  sensitive: z.boolean(),
  /** Position ids by stage as planned. */
  positions: z.array(id).min(1),
  cautions: z.array(words),
  redFlags: z.array(z.strictObject({ urgency, finding: words, action: words })),
  /** The clinic's own note, in a clinic's form alone. */
  localNote: z.strictObject({ by: words, words }).optional(),
  fields: z.array(formField),
});
export type FormItem = z.infer<typeof formItem>;

/** One system of the form, in run-sheet order. */
export const formSection = z.strictObject({
  /** System id; with a number after it when the run sheet comes back to the system. */
  linkId,
  system: id,
  title: words,
  /** Position that its first item is done in, for the mark at the edge. */
  position: id,
  items: z.array(formItem).min(1),
});
export type FormSection = z.infer<typeof formSection>;

/** A published source that a form rests on, in words, so that a release keeps it whatever becomes of the library. */
export const formSource = z.strictObject({
  id,
  /** Authors, title, where published, and where in it the facts stand. */
  citation: words,
  /** How it was read. */
  status: source.shape.status,
});
export type FormSource = z.infer<typeof formSource>;

/** What a position that the form uses is called. */
export const formPosition = z.strictObject({ id, label: words });
export type FormPosition = z.infer<typeof formPosition>;

/** What a clinic's form leaves out of the shared one: a whole item, or single fields of one that it holds. */
export const formOmission = z.strictObject({
  manoeuvre: id,
  title: words,
  /** Whether the whole item is left out. */
  whole: z.boolean(),
  /** Labels of what is not asked, without sides. */
  asked: z.array(words),
  /** Of a whole item: what cannot be hidden with it. */
  sensitive: z.boolean(),
  cautions: z.array(words),
  redFlags: formItem.shape.redFlags,
});
export type FormOmission = z.infer<typeof formOmission>;

/** The shared release that a clinic's form is made from. */
export const formOrigin = z.strictObject({
  /** Clinic id, and its name for narrow places. */
  clinic: id,
  by: words,
  /** Title, permanent address and version of the shared form. */
  title: words,
  url: z.url({ protocol: /^https$/ }),
  version,
});

/** Whose edition prints a form, and whom to call there: as the clinic has it today, and no part of the form. */
export const formImprint = clinicEdition.pick({
  id: true,
  name: true,
  short: true,
  paper: true,
  drawing: true,
  contacts: true,
  safeguarding: true,
  selfHarm: true,
  contactsChecked: true,
});
export type FormImprint = z.infer<typeof formImprint>;

/** The one value that every format of a form is rendered from. */
export const form = z.strictObject({
  id,
  title: words,
  purpose: words,
  leavesOut: words,
  /** Signs that must not be missed, most dangerous first; none for an examination that no complaint leads. */
  mustNotMiss: z.array(words),
  url: formName,
  version,
  /** `draft` at next, `active` once released, `retired` when withdrawn. */
  status: z.enum(['draft', 'active', 'retired']),
  date: day,
  publisher: words,
  copyright: words,
  /** SHA-256 of the canonical JSON without version, status, date, publisher, sources, imprint, sign-off and withdrawal, as hex. */
  hash: z.string().regex(/^[0-9a-f]{64}$/),
  sections: z.array(formSection).min(1),
  /** The positions of its items in words, so that a release keeps them. */
  positions: z.array(formPosition),
  /** What the form rests on, by id. Outside the hash: a source read again changes nothing that is asked. */
  sources: z.array(formSource).optional(),
  /** Of a clinic's form: the shared release that it is made from. */
  derivedFrom: formOrigin.optional(),
  /** Of a clinic's form: what it leaves out of the shared one. */
  notPart: z.array(formOmission).optional(),
  /** In a clinic's edition: whose it is. Outside the hash, and in no release: contacts change without a word of the form. */
  clinic: formImprint.optional(),
  /** Only once released. */
  signOff: signOff.optional(),
  /** Only once withdrawn. */
  withdrawal: withdrawal.optional(),
});
export type Form = z.infer<typeof form>;
