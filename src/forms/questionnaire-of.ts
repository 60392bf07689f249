import type { Questionnaire } from '@medplum/fhirtypes';
import type { Form } from '../../schemas/form.ts';
import { notPartGroup } from './clinic/not-part-group.ts';
import { groupItem } from './questionnaire-items.ts';

/** Where the hash of a form's content stands among its identifiers. */
export const hashIdentifierSystem = 'https://fingerbreadth.example/form-content-sha256';

/** The form as a FHIR R4 (4.0.1) Questionnaire, not yet held against the project's invariants. */
export function questionnaireOf(form: Form): Questionnaire {
  const { url, version, title, status, date, publisher, copyright } = form;
  return {
    resourceType: 'Questionnaire',
    id: ownId(form),
    language: 'en-GB',
    url,
    identifier: [{ system: hashIdentifierSystem, value: form.hash }],
    version,
    name: computerName(ownId(form)),
    title,
    ...originOf(form),
    status,
    subjectType: ['Patient'],
    date,
    publisher,
    description: description(form),
    purpose: form.purpose,
    copyright,
    ...approval(form),
    item: [...form.sections.map(groupItem), ...notPartGroup(form)],
  };
}

/** A clinic's form and the shared one may lie in the same record system. */
const ownId = ({ id, derivedFrom }: Form): string => (derivedFrom === undefined ? id : `${derivedFrom.clinic}-${id}`);

/** `derivedFrom` takes over nothing in FHIR R4: the form below is whole. */
function originOf({ derivedFrom }: Form): Pick<Questionnaire, 'derivedFrom'> {
  return derivedFrom === undefined ? {} : { derivedFrom: [`${derivedFrom.url}|${derivedFrom.version}`] };
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
