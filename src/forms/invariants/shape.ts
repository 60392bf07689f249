import type { QuestionnaireItem } from '@medplum/fhirtypes';
import { itemInvariant } from './invariant.ts';

/**
 * Groups hold items, display items hold and ask nothing, everything has words, and nothing is filled in beforehand.
 * Source of the first two: HL7 FHIR R4 (4.0.1), Questionnaire constraints que-1, que-3, que-6, que-8, que-9.
 */
export const shape = itemInvariant(
  'shape',
  'Items are built as FHIR asks, and nothing is answered in advance.',
  (item) => [
    ...groupFaults(item),
    ...displayFaults(item),
    ...(item.text?.trim() ? [] : ['found no text, expected words to read']),
    ...prefilledFaults(item),
  ],
);

function groupFaults({ type, item }: QuestionnaireItem): string[] {
  return type === 'group' && !item?.length ? ['found an empty group, expected items in it'] : [];
}

function displayFaults(item: QuestionnaireItem): string[] {
  if (item.type !== 'display') return [];
  const asking = (['item', 'code', 'required', 'repeats', 'readOnly', 'answerOption', 'maxLength'] as const).filter(
    (key) => item[key] !== undefined,
  );
  return asking.map((key) => `found "${key}" on a display item, expected text only`);
}

function prefilledFaults({ initial, answerOption = [] }: QuestionnaireItem): string[] {
  const chosen = answerOption.some(({ initialSelected }) => initialSelected === true);
  return initial?.length || chosen
    ? ['found an answer filled in beforehand, expected none: nothing counts as normal until it is examined']
    : [];
}
