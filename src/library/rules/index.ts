import { clinics } from './clinics.ts';
import { knownIds } from './known-ids.ts';
import { orderCycle } from './order-cycle.ts';
import { overdueReview } from './overdue-review.ts';
import { pageName } from './page-name.ts';
import { patientWording } from './patient-wording.ts';
import { positionChanges } from './position-changes.ts';
import { priorities } from './priorities.ts';
import { records } from './records.ts';
import { redFlags } from './red-flags.ts';
import { references } from './references.ts';
import { repeatedIds } from './repeated-ids.ts';
import type { Rule } from './rule.ts';
import { stageSeconds } from './stage-seconds.ts';
import { synonyms } from './synonyms.ts';
import { techniqueSteps } from './technique-steps.ts';
import { uniqueIds } from './unique-ids.ts';
import { units } from './units.ts';

/** Every rule that content must obey. */
export const rules: readonly Rule[] = [
  uniqueIds,
  knownIds,
  repeatedIds,
  references,
  pageName,
  orderCycle,
  positionChanges,
  priorities,
  patientWording,
  techniqueSteps,
  stageSeconds,
  redFlags,
  records,
  synonyms,
  units,
  clinics,
  overdueReview,
];
