import { z } from 'zod';
import { id, recordSides, words } from './common.ts';
import { line } from './inline.ts';

const common = {
  /** Stable for ever: it becomes the linkId of every form field made from it. */
  id,
  /** What the field is called on a form, without side or unit. */
  label: words,
  /** Sides asked for; default `none`. */
  sides: recordSides.default('none'),
  /** LOINC code, only where one truly exists, with its official name in `codeDisplay`. */
  code: z
    .string()
    .regex(/^\d{1,7}-\d$/, 'is not a LOINC code')
    .optional(),
  /** The unedited official LOINC name of `code`. */
  codeDisplay: words.optional(),
};

/** A finding: normal, abnormal or not examined, with room for detail. */
export const findingRecord = z.strictObject({
  kind: z.literal('finding'),
  ...common,
  /** The words for normal. */
  normal: line.min(1),
});

/** A graded scale: one of the grades of `scale`. */
export const scaleRecord = z.strictObject({
  kind: z.literal('scale'),
  ...common,
  /** Id in content/scales. */
  scale: id,
});

/** One of a few fixed answers. */
export const choiceRecord = z.strictObject({
  kind: z.literal('choice'),
  ...common,
  /** The answers in the order shown, at least two, no two alike. */
  options: z.array(words).min(2),
  /** Which answer is normal, where one is. */
  normal: words.optional(),
});

/** A number with a unit. */
export const quantityRecord = z.strictObject({
  kind: z.literal('quantity'),
  ...common,
  /** UCUM unit code, for example `cm`, `mm[Hg]`, `Cel`, `deg`, `/min`. */
  unit: words,
  /** Smallest number a form accepts, in `unit`; wide enough for real patients. */
  min: z.number(),
  /** Largest number a form accepts, in `unit`. */
  max: z.number(),
  /** Id in content/values of the normal limit or range shown beside the field. */
  value: id.optional(),
});

/** Free words. */
export const textRecord = z.strictObject({ kind: z.literal('text'), ...common });

/** One field that a form collects. */
export const record = z.discriminatedUnion('kind', [
  findingRecord,
  scaleRecord,
  choiceRecord,
  quantityRecord,
  textRecord,
]);
export type Record = z.infer<typeof record>;
