import { z } from 'zod';
import { id, words } from './common.ts';

/** A body system: one page of the library each. */
export const system = z.strictObject({
  id,
  title: words,
  /** Part of the body for grouping lists. */
  region: z.enum(['whole', 'head', 'neck-and-chest', 'abdomen', 'limbs-and-back', 'nerves']),
});
export type System = z.infer<typeof system>;

/** A position of the patient. */
export const position = z.strictObject({
  id,
  label: words,
  /** How the patient lies, sits or stands, for the examiner. */
  description: words,
  /** Plain words that bring the patient into it. */
  say: words,
  /** How to help and what to look out for while moving into it. */
  help: words,
  /** Whole seconds to move from here to each other position, an able adult with help at hand. */
  changeSeconds: z.record(id, z.int().positive()),
});
export type Position = z.infer<typeof position>;

/** A region uncovered for an examination. */
export const exposure = z.strictObject({
  id,
  label: words,
  /** What to uncover. */
  uncover: words,
  /** What stays covered meanwhile, and how it is covered again. */
  cover: words,
});
export type Exposure = z.infer<typeof exposure>;

/** Something to lay out before the examination. */
export const instrument = z.strictObject({
  id,
  label: words,
  /** What to check before the patient undresses. */
  check: words,
  /** How it is cleaned or thrown away. */
  cleaning: words,
  /** Used once and discarded; default false. */
  singleUse: z.boolean().default(false),
});
export type Instrument = z.infer<typeof instrument>;

/** Where the examiner stands or sits. */
export const examinerPlace = z.strictObject({ id, label: words, description: words });
export type ExaminerPlace = z.infer<typeof examinerPlace>;

/** A point or line of the body that techniques refer to. */
export const landmark = z.strictObject({
  id,
  label: words,
  /** How to find it with the hands. */
  find: words,
  synonyms: z.array(words).default([]),
});
export type Landmark = z.infer<typeof landmark>;

/** A bedside measurement with a page of its own under /measure/. */
export const tool = z.strictObject({
  id,
  title: words,
  summary: words,
  /** Value ids that it uses. */
  values: z.array(id).default([]),
  sources: z.array(id).min(1),
});
export type Tool = z.infer<typeof tool>;
