import { z } from 'zod';
import { id, words } from './common.ts';

/** A likelihood ratio with its 95 % interval where published. */
export const ratio = z
  .strictObject({
    value: z.number().nonnegative(),
    /** Lower end of the 95 % confidence interval. */
    low: z.number().nonnegative().optional(),
    /** Upper end of the 95 % confidence interval. */
    high: z.number().nonnegative().optional(),
  })
  .refine((r) => (r.low === undefined) === (r.high === undefined), 'has one end of its interval; give both or neither')
  .refine(
    (r) => r.low === undefined || (r.low <= r.value && r.value <= (r.high ?? Infinity)),
    'lies outside its own interval',
  );
export type Ratio = z.infer<typeof ratio>;

/** How much a finding changes the odds of a condition. */
export const evidence = z
  .strictObject({
    id,
    /** The finding, as a noun phrase: "Neck veins judged raised". */
    finding: words,
    /** The condition, as a noun phrase: "central venous pressure of 8 cm of water or more". */
    condition: words,
    /** Who was studied. */
    population: words,
    /** What the truth was judged by. */
    reference: words,
    /** Likelihood ratio when the finding is present. */
    present: ratio.optional(),
    /** Likelihood ratio when the finding is absent. */
    absent: ratio.optional(),
    source: id,
    /** Where in the source: table, section, or "abstract". */
    where: words,
    /** How a ratio was computed here, where it was, from published sensitivity and specificity. */
    derivation: words.optional(),
    /** Ids of entries that give other figures for the same question; both are shown. */
    disagreesWith: z.array(id).default([]),
    note: words.optional(),
  })
  .refine((e) => e.present !== undefined || e.absent !== undefined, 'has no ratio; give "present", "absent" or both');
export type Evidence = z.infer<typeof evidence>;
