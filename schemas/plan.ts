import { z } from 'zod';
import { id } from './common.ts';

/** What is to be examined, and what this patient and this room allow. */
export const planRequest = z
  .strictObject({
    /** Id of a stock exam. Exactly one of `form`, `manoeuvres`, `systems` is given. */
    form: id.optional(),
    /** Manoeuvre ids. */
    manoeuvres: z.array(id).min(1).optional(),
    /** System ids: every manoeuvre of each. */
    systems: z.array(id).min(1).optional(),
    /** Minutes there are. What does not fit is left out by the priorities of the library; preparation and closing never are. */
    minutes: z.number().positive().optional(),
    /** Position the patient is in at the start. */
    start: id.optional(),
    /** Positions the patient cannot take. */
    cannot: z.array(id).optional(),
    /** Instruments that are missing. */
    without: z.array(id).optional(),
    /** Manoeuvres to leave for last, after as many others as the order and the least seconds of changes allow. */
    last: z.array(id).optional(),
    /**
     * Sides not to examine. What is done on such a side alone is left out; what is done on both keeps the other side, with
     * all its seconds: words, setting out and waits are not halved.
     */
    avoidSides: z.array(z.enum(['left', 'right'])).optional(),
    /** Multiplies position-change times; 1 for an able adult, at most 100. */
    pace: z.number().positive().max(100).optional(),
  })
  .refine(
    (r) => [r.form, r.manoeuvres, r.systems].filter((x) => x !== undefined).length === 1,
    'names none or several of "form", "manoeuvres", "systems"; give exactly one',
  );
export type PlanRequest = z.infer<typeof planRequest>;

/** One step of a run sheet: one stage of one manoeuvre. */
export const planStep = z.strictObject({
  manoeuvre: id,
  /** Stage number, from 1. */
  stage: z.int().positive(),
  position: id,
  exposure: z.array(id),
  examiner: id,
  instruments: z.array(id),
  /** Seconds elapsed when the step starts. */
  start: z.number().nonnegative(),
  seconds: z.number().positive(),
  /** The side that is done, where the request avoids the other side of what is done on both. */
  side: z.enum(['left', 'right']).optional(),
});
export type PlanStep = z.infer<typeof planStep>;

/** A run sheet. */
export const plan = z.strictObject({
  steps: z.array(planStep),
  /** What the request names and the sheet does not hold. */
  leftOut: z.array(
    z.strictObject({
      manoeuvre: id,
      /** In words. */
      reason: z.string().min(1),
      /** How the manoeuvre can be adapted, in plain text, where the library says. */
      adaptations: z.array(z.string().min(1)).optional(),
    }),
  ),
  /** Instrument ids to lay out. */
  layOut: z.array(id),
  totals: z.strictObject({
    /** Everything: steps and position changes. */
    seconds: z.number().nonnegative(),
    positionChanges: z.int().nonnegative(),
    /** Seconds of position changes, the first from `start` included. */
    positionSeconds: z.number().nonnegative(),
    exposureChanges: z.int().nonnegative(),
    examinerMoves: z.int().nonnegative(),
  }),
  /** What was proven. */
  optimal: z.strictObject({
    /** No order of these steps takes fewer seconds of position changes. */
    positionSeconds: z.boolean(),
    /** No order that takes the patient through the same positions uncovers and covers less often. */
    exposureChanges: z.boolean().optional(),
    /** No such order with as few changes of exposure moves the examiner less. */
    examinerMoves: z.boolean().optional(),
    /** With `minutes`: nothing that was left out would have fitted beside all that comes before it by priority. */
    kept: z.boolean().optional(),
  }),
  /** Proven lower bound. */
  bound: z.strictObject({ positionSeconds: z.number().nonnegative() }),
});
export type Plan = z.infer<typeof plan>;
