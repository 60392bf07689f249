import type { Questionnaire } from '@medplum/fhirtypes';
import { type Invariant, shown } from './invariant.ts';

const day = /^\d{4}-\d{2}-\d{2}$/;
const something = /\S/;

/** What says which form this is, and what each must look like. */
const parts: { key: Extract<keyof Questionnaire, string>; pattern: RegExp; expected: string }[] = [
  {
    key: 'url',
    pattern: /^(https:\/\/|urn:uuid:)[^\s|#]+$/,
    expected: 'a permanent https address, or urn:uuid:, without "|" or "#"',
  },
  { key: 'version', pattern: /^\d+\.\d+\.\d+$/, expected: 'MAJOR.MINOR.PATCH' },
  { key: 'name', pattern: /^[A-Z][A-Za-z0-9_]{0,254}$/, expected: 'a capital letter, then letters and digits' },
  { key: 'title', pattern: something, expected: 'a title' },
  { key: 'date', pattern: day, expected: 'YYYY-MM-DD' },
  { key: 'publisher', pattern: something, expected: 'a publisher' },
  { key: 'copyright', pattern: something, expected: 'a copyright line' },
];

/** One permanent address, semantic version, date, publisher and copyright; no claim to a profile. */
export const identity: Invariant = {
  name: 'identity',
  description: 'A form says which form it is, and claims no profile.',
  check: (questionnaire) => [...partFaults(questionnaire), ...profileFaults(questionnaire)],
};

function partFaults(questionnaire: Questionnaire): string[] {
  return parts.flatMap(({ key, pattern, expected }) => {
    const found = questionnaire[key];
    if (typeof found === 'string' && pattern.test(found)) return [];
    return [`${key}: found ${shown(found as string | undefined)}, expected ${expected}`];
  });
}

function profileFaults({ meta }: Questionnaire): string[] {
  return (meta?.profile ?? []).map((profile) => `meta.profile: found "${profile}", expected no claim to a profile`);
}
