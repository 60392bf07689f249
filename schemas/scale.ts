import { z } from 'zod';
import { id, words } from './common.ts';

/** A graded scale in the project's own words. */
export const scale = z.strictObject({
  id,
  /** Name of the scale. */
  title: words,
  /** What is graded. */
  grades: z
    .array(
      z.strictObject({
        /** What is written down: "0", "4+", "C". */
        code: words,
        /** What it means, observable. */
        meaning: words,
        /** True for the grade or grades that are normal; default false. */
        normal: z.boolean().default(false),
      }),
    )
    .min(2),
  source: id,
  /** Where in the source. */
  where: words,
  note: words.optional(),
});
export type Scale = z.infer<typeof scale>;
