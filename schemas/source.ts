import { z } from 'zod';
import { id, words } from './common.ts';

/** A published source, or the statement that a habit of the trade has none. */
export const source = z.strictObject({
  id,
  /** `practice`: common practice without a published source; `standard`: a norm or guideline; `published`: everything else. */
  kind: z.enum(['published', 'standard', 'practice']),
  /** Authors or issuing body. */
  authors: words,
  title: words,
  /** Year of publication; absent only for `practice`. */
  year: z.int().min(1800).max(2100).optional(),
  /** Journal, publisher or site, with volume and pages. */
  container: words.optional(),
  /** Where in it the facts used stand: table, section, chapter. */
  where: words,
  doi: z
    .string()
    .regex(/^10\.\d{4,}\/\S+$/, 'is not a DOI; write it as 10.…/…')
    .optional(),
  /** PubMed number. */
  pmid: z.string().regex(/^\d+$/).optional(),
  url: z.url({ protocol: /^https?$/ }).optional(),
  /** How it was read: `seen` in full or at the place used, `abstract` only, `memory`: not seen, to be checked; `none` for practice. */
  status: z.enum(['seen', 'abstract', 'memory', 'none']),
  note: words.optional(),
});
export type Source = z.infer<typeof source>;
