import type { FormDefinition } from '../../schemas/form-definition.ts';
import type { PlanRequest } from '../../schemas/plan.ts';

/** The request for a stock exam as its sheet and its form are ordered: from the position that the patient begins in. */
export function stockRequest({ id, start }: Pick<FormDefinition, 'id' | 'start'>): PlanRequest {
  return start === undefined ? { form: id } : { form: id, start };
}
