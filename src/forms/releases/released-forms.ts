import type { Form } from '../../../schemas/form.ts';
import type { WithdrawalEntry } from '../../../schemas/sign-off.ts';
import { compareVersions } from './versions.ts';
import type { Release } from './release-file.ts';

/** Every release of a form, oldest first; at least one. */
export type ReleasesOfForm = readonly [Form, ...Form[]];

/** The frozen forms of all releases by form id, withdrawn ones marked as such. */
export type ReleasedForms = ReadonlyMap<string, ReleasesOfForm>;

/** Joins releases with what was withdrawn since: a withdrawn one is `retired` and says why; its content stays. */
export function releasedForms(
  releases: readonly Release[],
  withdrawals: readonly WithdrawalEntry[] = [],
): ReleasedForms {
  const forms = releases.map(({ form }) => withdrawnForm(form, withdrawals));
  const byId = Map.groupBy(forms, ({ id }) => id);
  return new Map(
    [...byId].map(([id, [first, ...more]]) => {
      if (first === undefined) throw new Error(`No release of "${id}".`);
      const sorted = [first, ...more].sort((a, b) => compareVersions(a.version, b.version));
      return [id, sorted as [Form, ...Form[]]];
    }),
  );
}

function withdrawnForm(form: Form, withdrawals: readonly WithdrawalEntry[]): Form {
  const entry = withdrawals.find((each) => each.form === form.id && each.version === form.version);
  if (entry === undefined) return form;
  const { withdrawn, by, reason, replacement } = entry;
  return { ...form, status: 'retired', withdrawal: { withdrawn, by, reason, ...(replacement && { replacement }) } };
}

/** The newest release, withdrawn or not: what a draft is compared with. */
export const newest = (releases: ReleasesOfForm): Form => releases.at(-1) ?? releases[0];

/** The release to use: the newest that is not withdrawn; none when all are. */
export const current = (releases: ReleasesOfForm | undefined): Form | undefined =>
  releases?.findLast(({ status }) => status === 'active');

/** What a release is to whoever holds a copy of it. */
export type Standing = 'current' | 'superseded' | 'withdrawn';

/** The standing of one release among those of its form. */
export function standingOf(form: Form, releases: ReleasesOfForm): Standing {
  if (form.status === 'retired') return 'withdrawn';
  return current(releases) === form ? 'current' : 'superseded';
}
