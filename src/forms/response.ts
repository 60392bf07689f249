import type { QuestionnaireResponse, QuestionnaireResponseItem } from '@medplum/fhirtypes';
import { enteredNumber } from './entered-number.ts';
import { chosenOption, type Filled, type Given, givenOf } from './filled.ts';
import type { FormSlice } from './form-slice.ts';

/**
 * A filled form as a FHIR R4 (4.0.1) QuestionnaireResponse, without patient and author: the record system that takes it
 * knows them, and marks it as complete. A number that can't be read is left out; one out of range is kept.
 * `authored` is a FHIR dateTime. Throws RangeError for a code that the form does not offer.
 */
export function questionnaireResponse(form: FormSlice, filled: Filled, authored: string): QuestionnaireResponse {
  const item = form.sections.flatMap((section) => groupItem(section, filled));
  return {
    resourceType: 'QuestionnaireResponse',
    language: 'en-GB',
    questionnaire: `${form.url}|${form.version}`,
    status: 'in-progress',
    authored,
    ...(item.length === 0 ? {} : { item }),
  };
}

function groupItem(
  { linkId, title, items }: FormSlice['sections'][number],
  filled: Filled,
): QuestionnaireResponseItem[] {
  const fields = items.flatMap((item) => item.fields);
  const item = fields.flatMap((field) => givenOf(field, filled)).flatMap(answerItem);
  return item.length === 0 ? [] : [{ linkId, text: title, item }];
}

function answerItem({ answer, given }: Given): QuestionnaireResponseItem[] {
  const value = answerValue({ answer, given });
  return value === undefined ? [] : [{ linkId: answer.linkId, text: answer.label, answer: [value] }];
}

type Value = NonNullable<QuestionnaireResponseItem['answer']>[number];

function answerValue({ answer, given }: Given): Value | undefined {
  if (answer.type === 'text') return { valueString: given };
  if (answer.type === 'coded') {
    const { system, code, officialName } = chosenOption(answer, given);
    return { valueCoding: { system, code, display: officialName } };
  }
  const number = enteredNumber(given);
  return number === undefined ? undefined : { valueDecimal: number };
}
