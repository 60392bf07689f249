import { z } from 'zod';
import { id, place, scope, sides, urgency, words } from './common.ts';
import { line } from './inline.ts';
import { record } from './record.ts';

/** A finding that cannot wait. */
export const redFlag = z.strictObject({
  /** `now`: stop and act; `today`: same-day senior review; `soon`: an appointment by local protocol. */
  urgency,
  /** What is seen, felt or heard. */
  finding: line.min(1),
  /** What to do. */
  action: line.min(1),
});
export type RedFlag = z.infer<typeof redFlag>;

/** The part of a manoeuvre that an author writes as attributes of `<Manoeuvre>`. */
export const manoeuvreHead = z.strictObject({
  /** Slug, unique over the library. */
  id,
  /** Starts with a verb. */
  title: words,
  /** Trade names, eponyms, abbreviations, lay words, a common misspelling; searched, not shown as clutter. */
  synonyms: z.array(words),
  scope,
  /** Needs explicit consent and a chaperone offered; default false. */
  sensitive: z.boolean(),
  /** One list of alternative position ids per stage; stages follow each other with nothing between. */
  stages: z.array(z.array(id).min(1)).min(1),
  /** Exposure ids: the least that serves. */
  exposure: z.array(id),
  /** Examiner place id. */
  examiner: id,
  /** Instrument ids. */
  instruments: z.array(id),
  /** Whole seconds for all sides and stages, the words said included (experienced examiner, well patient). */
  seconds: z.int().positive(),
  sides,
  /** Ids of manoeuvres that come first when both are on the sheet. */
  after: z.array(id),
  /** Ids in content/sources.yaml. */
  sources: z.array(id).min(1),
});

/** One manoeuvre: what is done with the hands, from aim to record. */
export const manoeuvre = manoeuvreHead.extend({
  /** Id of the system whose page holds it. */
  system: id,
  /** Orders added by rule (preparation first, finish last, sensitive last in its position). */
  derivedAfter: z.array(id),
  /** One sentence: what question this answers. */
  aim: line.min(1),
  /** The exact plain words for the patient, one sentence or more a line. */
  tell: z.array(line).min(1),
  /** Numbered steps, one action each. */
  technique: z.array(line).min(1),
  normal: z.array(line),
  abnormal: z.array(line),
  redFlags: z.array(redFlag),
  /** Why there is no red flag, where there is none. */
  noRedFlag: line.optional(),
  /** Contraindications, ways to hurt, infection control, when to stop. */
  cautions: z.array(line).min(1),
  errors: z.array(line),
  adaptations: z.array(line),
  /** Short lines for the pocket card, used instead of the technique where given. */
  card: z.array(line),
  records: z.array(record),
  /** Where it was written. */
  place,
});
export type Manoeuvre = z.infer<typeof manoeuvre>;
