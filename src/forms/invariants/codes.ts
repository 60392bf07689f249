import type { QuestionnaireItem } from '@medplum/fhirtypes';
import { type Invariant, itemsOf, shown } from './invariant.ts';

/** Codes of FHIR R4's required bindings on Questionnaire, abstract ones left out. Source: HL7 FHIR R4 (4.0.1), Questionnaire. */
export const requiredBindings = {
  status: ['draft', 'active', 'retired', 'unknown'],
  type: [
    ...['group', 'display', 'boolean', 'decimal', 'integer', 'date', 'dateTime', 'time'],
    ...['string', 'text', 'url', 'choice', 'open-choice', 'attachment', 'reference', 'quantity'],
  ],
  operator: ['exists', '=', '!=', '>', '<', '>=', '<='],
  enableBehavior: ['all', 'any'],
  resourceType: ['Questionnaire'],
  // A patient is examined; a learner is watched.
  subjectType: ['Patient', 'Practitioner'],
};

/** Codes come from the value sets that FHIR binds them to. */
export const codes: Invariant = {
  name: 'codes',
  description: 'Coded elements hold a code of their required binding.',
  check: (questionnaire) => [
    ...outside('resourceType', 'resourceType', questionnaire.resourceType),
    ...outside('status', 'status', questionnaire.status),
    ...(questionnaire.subjectType ?? [undefined]).flatMap((type) => outside('subjectType', 'subjectType', type)),
    ...itemsOf(questionnaire).flatMap(itemFaults),
  ],
};

function itemFaults(item: QuestionnaireItem): string[] {
  const { linkId, type, enableBehavior, enableWhen = [] } = item;
  return [
    ...outside(`${linkId}.type`, 'type', type),
    ...(enableBehavior === undefined ? [] : outside(`${linkId}.enableBehavior`, 'enableBehavior', enableBehavior)),
    ...enableWhen.flatMap(({ operator }) => outside(`${linkId}.enableWhen.operator`, 'operator', operator)),
  ];
}

function outside(where: string, binding: keyof typeof requiredBindings, found: string | undefined): string[] {
  if (found !== undefined && requiredBindings[binding].includes(found)) return [];
  return [`${where}: found ${shown(found)}, expected one of ${requiredBindings[binding].join(', ')}`];
}
