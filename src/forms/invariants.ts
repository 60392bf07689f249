import type { Questionnaire } from '@medplum/fhirtypes';
import { codes } from './invariants/codes.ts';
import { enableWhen } from './invariants/enable-when.ts';
import { extensions } from './invariants/extensions.ts';
import { identity } from './invariants/identity.ts';
import type { Invariant } from './invariants/invariant.ts';
import { linkIds } from './invariants/link-ids.ts';
import { loincCodes } from './invariants/loinc-codes.ts';
import { options } from './invariants/options.ts';
import { ranges } from './invariants/ranges.ts';
import { shape } from './invariants/shape.ts';
import { units } from './invariants/units.ts';

/** Everything that must hold of a Questionnaire. A new one is a new file and a line here. */
export const allInvariants: readonly Invariant[] = [
  identity,
  codes,
  linkIds,
  shape,
  options,
  enableWhen,
  extensions,
  ranges,
  units,
  loincCodes,
];

/** What is broken in a Questionnaire: one sentence each with the invariant's name behind it; empty when it is sound. */
export function invariants(questionnaire: Questionnaire): string[] {
  return allInvariants.flatMap(({ name, check }) => check(questionnaire).map((fault) => `${fault} (${name})`));
}
