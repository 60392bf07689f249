import type { Form } from '../../../schemas/form.ts';
import type { FormDefinition } from '../../../schemas/form-definition.ts';
import type { Library } from '../../../schemas/library.ts';
import { formChanges } from '../changes/form-changes.ts';
import { sizeOf } from '../changes/change.ts';
import { definitionPlace } from '../../library/definition-place.ts';
import { sortFaults, type Fault } from '../../library/faults.ts';
import { buildForm } from '../form.ts';
import { draftFaults } from './draft-faults.ts';
import { loadReleases, type LoadedReleases, type ReleaseOnFile } from './load.ts';
import { current, type ReleasesOfForm } from './released-forms.ts';
import { compareVersions, isEnough } from './versions.ts';

/** What the guard found. */
export interface Guarded {
  faults: Fault[];
  /** Releases whose review is overdue. */
  warnings: Fault[];
}

/**
 * Holds drafts to their releases: no released file edited, none missing from the chain, a draft that changed has a
 * version high enough for its change, no linkId used anew, withdrawals that name what was released.
 */
export function guardReleases(root: string, library: Library | undefined, today?: string): Guarded {
  const loaded = loadReleases(root);
  const faults = [
    ...loaded.faults,
    ...chainFaults(loaded.releases),
    ...withdrawalFaults(loaded),
    ...(library === undefined ? [] : definitionFaults(root, library, loaded)),
  ];
  return { faults: sortFaults(faults), warnings: today === undefined ? [] : overdue(loaded, today) };
}

const fileFault = (file: string, message: string): Fault => ({ file, line: 1, column: 1, rule: 'released', message });

function chainFaults(releases: readonly ReleaseOnFile[]): Fault[] {
  const byForm = Map.groupBy(releases, ({ form }) => form.id);
  return [...byForm.values()].flatMap((all) => {
    const sorted = all.toSorted((a, b) => compareVersions(a.form.version, b.form.version));
    return sorted.flatMap((release, index) => linkFaults(release, sorted[index - 1]));
  });
}

function linkFaults({ file, follows, form }: ReleaseOnFile, before: ReleaseOnFile | undefined): Fault[] {
  if (follows?.version !== before?.form.version || follows?.seal !== before?.seal)
    return [fileFault(file, brokenChain(follows, before))];
  if (before === undefined || before.form.hash === form.hash) return [];
  const size = sizeOf(formChanges(before.form, form)) ?? 'patch';
  if (isEnough(form.version, before.form.version, size)) return [];
  return [fileFault(file, `Its version is too small for the ${size} change since ${before.form.version}.`)];
}

function brokenChain(follows: ReleaseOnFile['follows'], before: ReleaseOnFile | undefined): string {
  const said = follows === undefined ? 'the first release' : `release ${follows.version} as it was sealed then`;
  const found = before === undefined ? 'no release' : `release ${before.form.version} as it is now`;
  return `It follows ${said}, but before it stands ${found}. Restore what was released before it.`;
}

function withdrawalFaults({ withdrawals, forms }: LoadedReleases): Fault[] {
  return withdrawals.flatMap(({ value, at }, index) => {
    const fault = (key: string, message: string): Fault => ({ ...at([key]), rule: 'withdrawn', message });
    const { form, version, replacement } = value;
    const versions = (forms.get(form) ?? []).map((each) => each.version);
    if (!versions.includes(version))
      return [
        fault('version', `There is no release ${version} of "${form}". Releases: ${versions.join(', ') || 'none'}.`),
      ];
    const again = withdrawals.findIndex(({ value: each }) => each.form === form && each.version === version) < index;
    const gone = forms.get(form)?.find((each) => each.version === replacement)?.status !== 'active';
    return [
      ...(again ? [fault('version', `Release ${version} of "${form}" is withdrawn twice. Keep one entry.`)] : []),
      ...(replacement !== undefined && gone
        ? [fault('replacement', `The replacement ${replacement} is not a release of "${form}" that is in use.`)]
        : []),
    ];
  });
}

function definitionFaults(root: string, library: Library, { releases, forms }: LoadedReleases): Fault[] {
  const orphans = releases.filter(({ form }) => !library.forms.some(({ id }) => id === form.id));
  const lost = orphans.map(({ file, form }) => {
    return fileFault(
      file,
      `The form "${form.id}" has no definition any more. Keep it, and withdraw its releases instead.`,
    );
  });
  return [
    ...lost,
    ...library.forms.flatMap((definition) => draftFaultsOf(root, library, definition, forms.get(definition.id))),
  ];
}

function draftFaultsOf(root: string, library: Library, { id }: FormDefinition, releases?: ReleasesOfForm): Fault[] {
  if (releases === undefined) return [];
  const draft: Form = buildForm(library, id);
  return draftFaults(draft, releases).map(({ key, message }) => {
    return { ...definitionPlace(root, id, key), rule: 'release-version', message };
  });
}

function overdue({ forms, releases }: LoadedReleases, today: string): Fault[] {
  return [...forms.values()].flatMap((all) => {
    const form = current(all);
    if (form?.signOff === undefined || form.signOff.reviewDue >= today) return [];
    const file = releases.find((one) => one.form.id === form.id && one.form.version === form.version)?.file ?? form.id;
    const message = `The review of this release was due on ${form.signOff.reviewDue}. Have it read again and released anew, or withdraw it.`;
    return [{ ...fileFault(file, message), rule: 'overdue-review' }];
  });
}
