import { z } from 'zod';
import { id, scope, words } from './common.ts';

/**
 * One rung of what is kept when there is too little time. The rungs are read from the first to the last, and each is kept
 * when it still fits beside all that was kept before it: nothing further down ever takes the place of something higher up.
 */
export const priority = z
  .strictObject({
    /** Slug of the rung, unique. */
    id,
    /** What the rung is, as the sheet names it when it is left out. */
    title: words,
    /** Why it stands here and, for `together`, why half of it misleads or harms. */
    why: words,
    /**
     * `always`: kept however little time there is. `together`: kept whole or left out whole. `each`: one by one, in the
     * order written. Only what is asked for counts: a rung may name more than an examination holds.
     */
    keep: z.enum(['always', 'together', 'each']),
    /** Manoeuvre ids; no manoeuvre stands on two rungs. */
    manoeuvres: z.array(id).default([]),
    /** Every manoeuvre of these scopes that no rung names, in page order; no scope stands on two rungs. */
    scopes: z.array(scope).default([]),
  })
  .refine((p) => p.manoeuvres.length + p.scopes.length > 0, 'holds nothing; give "manoeuvres", "scopes" or both');
export type Priority = z.infer<typeof priority>;
