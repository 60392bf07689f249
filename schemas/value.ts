import { z } from 'zod';
import { id, words } from './common.ts';

/** A figure another source gives for the same thing. */
export const otherFigure = z.strictObject({
  /** The figure as a number, or a low and a high one, in the entry's unit. */
  value: z.union([z.number(), z.strictObject({ low: z.number(), high: z.number() })]),
  source: id,
  /** Where in the source: table, section or page. */
  where: words,
  /** What differs: population, method, or only convention. */
  note: words.optional(),
});

const common = {
  id,
  /** What is measured, as a noun phrase in sentence case. */
  label: words,
  /** UCUM unit code; `1` for a count or a ratio. */
  unit: words,
  /** Whom it applies to: age, sex, position, conditions. */
  appliesTo: words,
  source: id,
  /** Where in the source: table, section, or "abstract". */
  where: words,
  /** Figures of other sources, shown side by side. */
  others: z.array(otherFigure).default([]),
  /** Why this figure is the one used, where sources disagree. */
  chosenBecause: words.optional(),
  /** What can mislead about the figure. */
  note: words.optional(),
};

/** A limit between normal and not. */
export const limitValue = z.strictObject({
  kind: z.literal('limit'),
  ...common,
  /** `at-most`: normal up to and including the number; `at-least`: from it; `below`, `above`: without it. */
  normal: z.enum(['at-most', 'at-least', 'below', 'above']),
  value: z.number(),
});

/** A normal range, both ends included. */
export const rangeValue = z.strictObject({ kind: z.literal('range'), ...common, low: z.number(), high: z.number() });

/** One number that is not a limit: a dose, a duration, a distance. */
export const numberValue = z.strictObject({ kind: z.literal('number'), ...common, value: z.number() });

/** The same thing under several conditions. */
export const seriesValue = z.strictObject({
  kind: z.literal('series'),
  ...common,
  /** Each with its condition in words, for example "at 45°". */
  points: z.array(z.strictObject({ at: words, value: z.number() })).min(2),
});

/** A threshold, range or figure that lives once and is referred to by id. */
export const value = z.discriminatedUnion('kind', [limitValue, rangeValue, numberValue, seriesValue]);
export type Value = z.infer<typeof value>;
