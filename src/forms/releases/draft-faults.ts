import type { Form, FormField } from '../../../schemas/form.ts';
import { fieldChanges } from '../changes/field-changes.ts';
import { formChanges } from '../changes/form-changes.ts';
import { sizeOf } from '../changes/change.ts';
import { newest, type ReleasesOfForm } from './released-forms.ts';
import { compareVersions, isEnough, nextVersion } from './versions.ts';

/** What is wrong with a draft, and the key of its definition that it is wrong with. */
export interface DraftFault {
  key: 'version' | 'url' | 'signOff' | 'id';
  message: string;
}

/** What keeps a draft from following its releases: identity, version, and linkIds that once meant something else. */
export function draftFaults(draft: Form, releases: ReleasesOfForm): DraftFault[] {
  return [...urlFaults(draft, newest(releases)), ...versionFaults(draft, newest(releases)), ...reused(draft, releases)];
}

function urlFaults(draft: Form, last: Form): DraftFault[] {
  if (draft.url === last.url) return [];
  const message = `The permanent address is "${draft.url}"; released as "${last.url}". Write the released one: it never changes.`;
  return [{ key: 'url', message }];
}

/** Whether anything that a form asks or says is another than in a release. */
export const differs = (draft: Form, last: Form): boolean => draft.hash !== last.hash;

function versionFaults(draft: Form, last: Form): DraftFault[] {
  const { version } = draft;
  const fault = (message: string): DraftFault[] => [{ key: 'version', message }];
  if (!differs(draft, last)) {
    const below = compareVersions(version, last.version) < 0;
    return below ? fault(`The version ${version} is below ${last.version}, which is released. Raise it.`) : [];
  }
  const changes = formChanges(last, draft);
  const size = sizeOf(changes) ?? 'patch';
  if (isEnough(version, last.version, size)) return [];
  const largest = changes.find((change) => change.size === size);
  const example = largest === undefined ? '' : `, for example ${largest.what} (${largest.where}): ${largest.words}`;
  const needed = nextVersion(last.version, size);
  return fault(
    `The version ${version} is too small: since release ${last.version} there is a ${size} change${example}. Write version: ${needed}, or a higher one.`,
  );
}

const fieldsOf = ({ sections }: Form): FormField[] =>
  sections.flatMap(({ items }) => items.flatMap(({ fields }) => fields));

/** A linkId that was dropped may come back only with the meaning it had. */
function reused(draft: Form, releases: ReleasesOfForm): DraftFault[] {
  const inLast = new Set(fieldsOf(newest(releases)).map(({ linkId }) => linkId));
  return fieldsOf(draft)
    .filter(({ linkId }) => !inLast.has(linkId))
    .flatMap((field): DraftFault[] => {
      const had = releases.findLast((form) => fieldsOf(form).some(({ linkId }) => linkId === field.linkId));
      const before = had && fieldsOf(had).find(({ linkId }) => linkId === field.linkId);
      if (before === undefined || !fieldChanges(before, field).some(({ size }) => size === 'major')) return [];
      const message = `The linkId "${field.linkId}" meant something else in release ${had?.version ?? ''}. Give the record another id: no linkId is used anew.`;
      return [{ key: 'id', message }];
    });
}
