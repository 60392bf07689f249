import type { Form } from '../../schemas/form.ts';
import { sizeOf } from '../forms/changes/change.ts';
import { formChanges } from '../forms/changes/form-changes.ts';
import { changesJson } from '../forms/changes/json.ts';
import { changesText } from '../forms/changes/words.ts';
import { editionWords } from '../forms/edition.ts';
import { nextVersion } from '../forms/releases/versions.ts';
import type { Outcome } from './form-note.ts';
import { formOf } from './form-version.ts';

/** `form diff A B`: what changed from one version to another, in words or as JSON. */
export function formDiff(root: string, a: string, b: string, asJson: boolean): Outcome {
  const before = formOf(root, a);
  if ('text' in before) return before;
  const after = formOf(root, b, 'next');
  if ('text' in after) return after;
  return { text: asJson ? JSON.stringify(changesJson(before, after), null, 2) : diffText(before, after), code: 0 };
}

function diffText(before: Form, after: Form): string {
  const changes = formChanges(before, after);
  const size = sizeOf(changes);
  const end =
    size === undefined
      ? []
      : [`A ${size} change: after ${before.version} it needs version ${nextVersion(before.version, size)} or higher.`];
  return [`From ${editionWords(before)} to ${editionWords(after)}`, changesText(changes), ...end].join('\n\n');
}
