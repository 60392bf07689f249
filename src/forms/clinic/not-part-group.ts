import type { QuestionnaireItem } from '@medplum/fhirtypes';
import type { Form } from '../../../schemas/form.ts';
import { safetyLines } from '../safety-words.ts';
import { notPartGuide, notPartTitle, omissionsOf, omissionWords, omittedItem } from './not-part.ts';

/** What a clinic's form leaves out, as lines to read; no group where nothing is. */
export function notPartGroup(form: Form): QuestionnaireItem[] {
  const omissions = omissionsOf(form);
  if (omissions.length === 0) return [];
  const lines = omissions.flatMap((omission) => [
    { linkId: `not-part.${omission.manoeuvre}`, text: omissionWords(omission) },
    ...safetyLines(omittedItem(omission)),
  ]);
  const item = [{ linkId: 'not-part.guide', text: notPartGuide }, ...lines].map(
    ({ linkId, text }): QuestionnaireItem => ({ linkId, type: 'display', text }),
  );
  return [{ linkId: 'not-part', type: 'group', text: notPartTitle, item }];
}
