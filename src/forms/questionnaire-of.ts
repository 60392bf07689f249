import type { Questionnaire } from '@medplum/fhirtypes';
import type { Form } from '../../schemas/form.ts';
import { groupItem } from './questionnaire-items.ts';

/** Where the hash of a form's content stands among its identifiers. */
export const hashIdentifierSystem = 'https://fingerbreadth.example/form-content-sha256';

/** The form as a FHIR R4 (4.0.1) Questionnaire, not yet held against the project's invariants. */
export function questionnaireOf(form: Form): Questionnaire {
  const { id, url, version, title, status, date, publisher, copyright } = form;
  return {
    resourceType: 'Questionnaire',
    id,
    language: 'en-GB',
    url,
    identifier: [{ system: hashIdentifierSystem, value: form.hash }],
    version,
    name: computerName(id),
    title,
    status,
    subjectType: ['Patient'],
    date,
    publisher,
    description: description(form),
    purpose: form.purpose,
    copyright,
    ...approval(form),
    item: form.sections.map(groupItem),
  };
}

/** When the content was approved, and last read against its sources, which a sign-off does in one. */
function approval({ signOff }: Form): Pick<Questionnaire, 'approvalDate' | 'lastReviewDate'> {
  return signOff === undefined ? {} : { approvalDate: signOff.approved, lastReviewDate: signOff.approved };
}

function description({ leavesOut, mustNotMiss }: Form): string {
  const signs = mustNotMiss.length > 0 ? `Must not be missed: ${mustNotMiss.join('; ')}.\n\n` : '';
  return `${signs}What it leaves out: ${leavesOut}\n\nFor trained staff. Follows local protocol. Not a diagnosis. A filled form is a health record.`;
}

/** `adult-screening` → `AdultScreening`: the shape that FHIR asks of a name. */
function computerName(id: string): string {
  const words = id.split('-').map((word) => `${word.charAt(0).toUpperCase()}${word.slice(1)}`);
  return `${/^\d/.test(id) ? 'Form' : ''}${words.join('')}`;
}
