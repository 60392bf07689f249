import { z } from 'zod';
import { id, scope, words } from './common.ts';

/** A set of pocket cards. */
export const cardSet = z.strictObject({
  id,
  title: words,
  /** What the set is for, in a sentence. */
  purpose: words,
  /** Id of the system whose manoeuvres it holds, in page order. */
  system: id,
  /** Only these scopes; default all. */
  scopes: z.array(scope).optional(),
});
export type CardSet = z.infer<typeof cardSet>;
