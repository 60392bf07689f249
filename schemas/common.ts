import { z } from 'zod';

/** A slug: lower case, digits, single hyphens. Ids are stable for ever and unique within their noun. */
export const id = z
  .string()
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'is not an id; use lower-case letters, digits and single hyphens');

/** A calendar day, YYYY-MM-DD. Dates come from content, never from the clock. */
export const day = z.iso.date();

/** Non-empty text without leading or trailing white space. */
export const words = z.string().trim().min(1, 'is empty');

/**
 * Permanent name of a form: an https address, or `urn:uuid:` (RFC 9562) for one whose maker has no address.
 * FHIR R4 allows both for a Questionnaire's url.
 */
export const formName = z
  .url({ protocol: /^(https|urn)$/ })
  .regex(
    /^(https:|urn:uuid:[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$)/,
    'is neither an https address nor urn:uuid: with a UUID in lower case',
  );

/** Semantic version, MAJOR.MINOR.PATCH. */
export const version = z
  .string()
  .regex(/^\d+\.\d+\.\d+$/, 'is not a version; write MAJOR.MINOR.PATCH, for example 1.0.0');

/** Which part of practice an entry belongs to; the catalogue's word. */
export const scope = z.enum(['screening', 'complete', 'extended', 'intake', 'preparation']);
export type Scope = z.infer<typeof scope>;

/** Which sides of the body an entry is done on. */
export const sides = z.enum(['none', 'both', 'left', 'right']);
export type Sides = z.infer<typeof sides>;

/** Which sides a record asks for; `either` asks which side was used. */
export const recordSides = z.enum(['none', 'both', 'left', 'right', 'either']);
export type RecordSides = z.infer<typeof recordSides>;

/** How fast a red flag needs an answer: act now, same-day senior review, or an appointment by local protocol. */
export const urgency = z.enum(['now', 'today', 'soon']);
export type Urgency = z.infer<typeof urgency>;

/** Where a piece of content was written, for fault messages. Lines and columns start at 1. */
export const place = z.strictObject({
  /** Path as given to the reader, with forward slashes. */
  file: z.string(),
  line: z.int().positive(),
  column: z.int().positive(),
});
export type Place = z.infer<typeof place>;
