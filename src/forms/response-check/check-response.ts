import type { Questionnaire } from '@medplum/fhirtypes';
import { itemFaults } from './items.ts';
import { conditionFaults } from './conditions.ts';
import { found, isGroup, type ResponseFault, unknownKeys } from './fault.ts';

/** Keys of a QuestionnaireResponse. Source: HL7 FHIR R4 (4.0.1), QuestionnaireResponse, DomainResource. */
const knownKeys = [
  ...['resourceType', 'id', 'meta', 'implicitRules', 'language', 'text', 'contained', 'extension', 'modifierExtension'],
  ...[
    'identifier',
    'basedOn',
    'partOf',
    'questionnaire',
    'status',
    'subject',
    'encounter',
    'authored',
    'author',
    'source',
    'item',
  ],
];

/** Codes of the required binding. Source: HL7 FHIR R4 (4.0.1), QuestionnaireResponseStatus. */
const statuses = ['in-progress', 'completed', 'amended', 'entered-in-error', 'stopped'];

/**
 * Every fault of a FHIR R4 QuestionnaireResponse against its form: identity, keys, items where they belong, types,
 * ranges, options, and answers that nothing opens. Throws nothing, whatever `response` is.
 */
export function checkResponse(form: Questionnaire, response: unknown): ResponseFault[] {
  if (!isGroup(response))
    return [
      {
        path: [],
        message: `Found ${found(response)}, expected a QuestionnaireResponse. Write an object with resourceType.`,
      },
    ];
  return [
    ...headFaults(form, response),
    ...itemFaults(form, form, ['item'], response['item']),
    ...conditionFaults(form, response),
  ];
}

function headFaults(form: Questionnaire, response: Record<string, unknown>): ResponseFault[] {
  const { resourceType, status, authored } = response;
  return [
    ...unknownKeys(response, knownKeys, []),
    ...wrong(resourceType !== 'QuestionnaireResponse', 'resourceType', resourceType, '"QuestionnaireResponse"'),
    ...wrong(!statuses.includes(status as string), 'status', status, `one of ${statuses.join(', ')}`),
    ...questionnaireFaults(form, response['questionnaire']),
    ...wrong(
      authored !== undefined && !isDateTime(authored),
      'authored',
      authored,
      'a FHIR dateTime, for example 2026-11-25T09:30:00Z',
    ),
  ];
}

function wrong(is: boolean, key: string, value: unknown, expected: string): ResponseFault[] {
  return is ? [{ path: [key], message: `Found ${found(value)}, expected ${expected}. Correct "${key}".` }] : [];
}

function questionnaireFaults({ url = '', version = '' }: Questionnaire, value: unknown): ResponseFault[] {
  const expected = `"${url}|${version}"`;
  const fault = (message: string): ResponseFault[] => [{ path: ['questionnaire'], message }];
  if (typeof value !== 'string')
    return fault(`Found ${found(value)}, expected ${expected}. Name the form and its version.`);
  const [address, number] = value.split('|');
  if (address !== url)
    return fault(`Found the form ${found(address)}, expected ${expected}. Check it against the form that it answers.`);
  if (number === undefined)
    return fault(`Found no version, expected ${expected}. Write the version that was filled in.`);
  if (number !== version)
    return fault(`Found version ${found(number)}, expected ${expected}. Check it against the version that it answers.`);
  return [];
}

/** Source: HL7 FHIR R4 (4.0.1), dateTime. */
const dateTime =
  /^\d{4}(-(0[1-9]|1[0-2])(-(0[1-9]|[12]\d|3[01])(T([01]\d|2[0-3]):[0-5]\d:([0-5]\d|60)(\.\d+)?(Z|[+-]((0\d|1[0-3]):[0-5]\d|14:00)))?)?)?$/;
const isDateTime = (value: unknown): boolean => typeof value === 'string' && dateTime.test(value);
