import { z } from 'zod';
import { day, id, words } from './common.ts';

/** Front matter of a guide page. */
export const guideHead = z.strictObject({
  title: words,
  /** One sentence for lists and search. */
  summary: words,
  /** Place in the list of guides. */
  order: z.int().nonnegative(),
  /** Day of the last review. */
  reviewed: day,
});

/** A guide: plain prose beside the protocols. The prose itself is rendered from its file. */
export const guide = guideHead.extend({ id });
export type Guide = z.infer<typeof guide>;
