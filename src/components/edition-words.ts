import type { Edition } from '../pages/forms/_editions.ts';
import { type Change, sizeOf } from '../forms/changes/change.ts';
import { formChanges } from '../forms/changes/form-changes.ts';

/** What the standing of a version means for whoever holds a copy of it. */
export const standingWords: { [S in Edition['standing']]: { label: string; meaning: string } } = {
  draft: {
    label: 'Draft',
    meaning:
      'Not released and not signed off: it changes without notice. Try it, comment on it, do not put it into use.',
  },
  current: { label: 'Current', meaning: 'The newest release, signed off by those named here. It no longer changes.' },
  superseded: {
    label: 'Superseded',
    meaning: 'A newer version is released. Finish what was begun on this one, and begin anew on the newer.',
  },
  withdrawn: { label: 'Withdrawn', meaning: 'No longer to be used. Its files stay so that filled copies can be read.' },
};

/** The changes of a version since the release before it; none for a first release. */
export function changesOf({ form, before }: Edition): Change[] {
  return before === undefined ? [] : formChanges(before, form);
}

/** How large the changes of a version are, in a few words. */
export function changeSummary(edition: Edition): string {
  if (edition.before === undefined) return 'First release';
  const changes = changesOf(edition);
  const size = sizeOf(changes);
  if (size === undefined) return 'Signed off anew, not a word changed';
  return `${{ major: 'Major', minor: 'Minor', patch: 'Wording' }[size]}: ${changes.length} ${changes.length === 1 ? 'change' : 'changes'}`;
}

/** What whoever holds a copy of a version is to do with it; `used` is the version of the form that is in use. */
export function copyAdvice({ form, standing }: Pick<Edition, 'form' | 'standing'>, used: string): string {
  if (standing === 'current') return 'It is the newest release.';
  if (standing === 'draft') return 'Do not put it into use.';
  if (standing === 'superseded') return `Use version ${used}.`;
  const { reason = '', replacement } = form.withdrawal ?? {};
  const instead = replacement === undefined ? 'Nothing replaces it.' : `Use version ${replacement}.`;
  return `Do not use it: ${reason} ${instead}`;
}
