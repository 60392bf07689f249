import type { Coding } from '@medplum/fhirtypes';
import { codeSystems } from '../code-systems.ts';
import { isLoincCode, loincNotice } from '../loinc.ts';
import { itemInvariant } from './invariant.ts';

/** Item codes are LOINC with a right check digit and the official name, and the notice stands in `copyright`. */
export const loincCodes = itemInvariant(
  'loinc',
  'LOINC codes are whole and carry their notice.',
  ({ code = [] }, { copyright = '' }) => [
    ...code.flatMap(codeFaults),
    ...(code.length > 0 && !copyright.includes(loincNotice)
      ? ["found a code without LOINC's notice in copyright, expected the notice word for word"]
      : []),
  ],
);

function codeFaults({ system, code = '', display }: Coding): string[] {
  if (system !== codeSystems.loinc) return [`found the code system "${system}", expected ${codeSystems.loinc}`];
  return [
    ...(isLoincCode(code) ? [] : [`found the LOINC code "${code}", expected one with the right check digit`]),
    ...(display?.trim() ? [] : [`found the LOINC code "${code}" without display, expected its official name`]),
  ];
}
