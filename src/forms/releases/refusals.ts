import type { Form } from '../../../schemas/form.ts';
import type { FormDefinition } from '../../../schemas/form-definition.ts';
import { shortCode } from '../edition.ts';
import { differs, type DraftFault, draftFaults } from './draft-faults.ts';
import { newest, type ReleasesOfForm } from './released-forms.ts';
import { compareVersions } from './versions.ts';

/** What a release is judged by. */
export interface ReleaseRequest {
  definition: FormDefinition;
  draft: Form;
  /** What was released before. */
  releases?: ReleasesOfForm | undefined;
  /** The day, YYYY-MM-DD. */
  today: string;
}

/** Why a draft cannot be released; empty when it can. */
export function refusals({ definition, draft, releases, today }: ReleaseRequest): DraftFault[] {
  return [
    ...(releases === undefined ? [] : [...draftFaults(draft, releases), ...nothingNew(draft, newest(releases))]),
    ...signOffFaults(definition, draft, today),
  ];
}

/** Unchanged content may be released again under a new version: that renews its sign-off. */
function nothingNew(draft: Form, last: Form): DraftFault[] {
  if (differs(draft, last) || compareVersions(draft.version, last.version) > 0) return [];
  return [
    { key: 'version', message: `Nothing has changed since release ${last.version}. There is nothing to release.` },
  ];
}

function signOffFaults({ signOff, author }: FormDefinition, draft: Form, today: string): DraftFault[] {
  const fault = (message: string): DraftFault => ({ key: 'signOff', message });
  const code = shortCode(draft.hash);
  if (signOff === undefined)
    return [
      fault(
        `The form is not signed off. Write signOff with version: ${draft.version}, code: "${code}", reviewer, approver, approved and reviewDue.`,
      ),
    ];
  const { reviewer, approved, reviewDue } = signOff;
  const checks: [boolean, string][] = [
    [
      signOff.version !== draft.version,
      `The sign-off is for version ${signOff.version}, the draft is ${draft.version}. Have this version signed off.`,
    ],
    [
      signOff.code !== code,
      `The sign-off is for content ${signOff.code}, the draft's is ${code}: it changed after it was read. Have it read again.`,
    ],
    [
      reviewer === author,
      `The reviewer and the author are both "${author}". A form is reviewed by another than its author.`,
    ],
    [approved > today, `It is approved on ${approved}, which is still to come.`],
    [reviewDue <= approved, `Its review is due on ${reviewDue}, not after ${approved}, when it was approved.`],
    [reviewDue < today, `Its review was due on ${reviewDue}. Have it reviewed before it is released again.`],
  ];
  return checks.flatMap(([wrong, message]) => (wrong ? [fault(message)] : []));
}

/** The form as it is frozen: released on the day of its approval, with its sign-off. Throws without a sign-off. */
export function frozenForm({ author, signOff }: FormDefinition, draft: Form): Form {
  if (signOff === undefined) throw new Error(`The form "${draft.id}" is not signed off.`);
  const { reviewer, approver, approved, reviewDue } = signOff;
  return { ...draft, status: 'active', date: approved, signOff: { author, reviewer, approver, approved, reviewDue } };
}
