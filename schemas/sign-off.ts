import { z } from 'zod';
import { day, id, version, words } from './common.ts';

const roles = {
  /** Role, or name where the clinic wishes, of who read it against its sources; never its author. */
  reviewer: words,
  /** Role or name of who answers for its use. */
  approver: words,
  /** Day of approval; the date of the release. */
  approved: day,
  /** Day by which it must be read again. */
  reviewDue: day,
};

/** The sign-off of a release: who wrote, reviewed and approved it, and until when that holds. */
export const signOff = z.strictObject({ /** Role or name of who wrote it. */ author: words, ...roles });
export type SignOff = z.infer<typeof signOff>;

/** A sign-off as written in a form's definition: it holds for one version with one content, and for no other. */
export const draftSignOff = z.strictObject({
  version,
  /** Short code of the content that was read: the first eight digits of its hash. */
  code: z.string().regex(/^[0-9a-f]{8}$/, 'is not a short code; write its eight digits in quotation marks'),
  ...roles,
});
export type DraftSignOff = z.infer<typeof draftSignOff>;

/** Why a release is no longer to be used. */
export const withdrawal = z.strictObject({
  withdrawn: day,
  /** Role or name of who withdrew it. */
  by: words,
  reason: words,
  /** Version to use in its place; none when nothing replaces it. */
  replacement: version.optional(),
});
export type Withdrawal = z.infer<typeof withdrawal>;

/** A withdrawal as written in content/forms/released/withdrawn.yaml. */
export const withdrawalEntry = z.strictObject({ form: id, version, ...withdrawal.shape });
export type WithdrawalEntry = z.infer<typeof withdrawalEntry>;
