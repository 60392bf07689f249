import type { Questionnaire } from '@medplum/fhirtypes';
import type { Form } from '../../schemas/form.ts';
import { invariants } from './invariants.ts';
import { questionnaireOf } from './questionnaire-of.ts';

export { hashIdentifierSystem } from './questionnaire-of.ts';

/**
 * The form as a FHIR R4 (4.0.1) Questionnaire.
 * Throws, naming each, when it breaks the project's invariants.
 */
export function questionnaire(form: Form): Questionnaire {
  const built = questionnaireOf(form);
  const faults = invariants(built);
  if (faults.length > 0) throw new Error(`The Questionnaire of form "${form.id}" is not sound:\n${faults.join('\n')}`);
  return built;
}
