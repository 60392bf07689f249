import { z } from 'zod';
import { day, formName, id, scope, version, words } from './common.ts';
import { draftSignOff } from './sign-off.ts';

/** An examination: which manoeuvres it holds, and how its form is versioned. */
export const formDefinition = z
  .strictObject({
    id,
    title: words,
    /** What the examination is for. */
    purpose: words,
    /** What it leaves out, said plainly. */
    leavesOut: words,
    /** Signs that must not be missed, for complaint-led sets. */
    mustNotMiss: z.array(words).default([]),
    /** Every manoeuvre of these scopes. */
    scopes: z.array(scope).default([]),
    /** Single manoeuvres by id, beside the scopes. */
    manoeuvres: z.array(id).default([]),
    /** Position that the patient is in when the examination begins; the sheet and the form are ordered from it. */
    start: id.optional(),
    /** Permanent canonical name of the form; a constant of its publisher, never made from the site's address. */
    url: formName,
    /** Version that the draft will have when it is released. */
    version,
    publisher: words,
    copyright: words,
    /** Role that wrote the form, and day of the draft. */
    author: words,
    drafted: day,
    /** Who reviewed and approved the draft; needed before it is released. */
    signOff: draftSignOff.optional(),
  })
  .refine((f) => f.scopes.length + f.manoeuvres.length > 0, 'holds nothing; give "scopes", "manoeuvres" or both');
export type FormDefinition = z.infer<typeof formDefinition>;
