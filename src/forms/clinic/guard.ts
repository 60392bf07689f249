import type { ClinicEdition, ClinicForm } from '../../../schemas/clinic.ts';
import type { Form } from '../../../schemas/form.ts';
import type { Library } from '../../../schemas/library.ts';
import { clinicPlaces } from '../../library/clinic/places.ts';
import { sortFaults, type At, type Fault } from '../../library/faults.ts';
import { draftFaults } from '../releases/draft-faults.ts';
import { guardReleases, type Guarded } from '../releases/guard.ts';
import { loadReleases } from '../releases/load.ts';
import { current, type ReleasedForms } from '../releases/released-forms.ts';
import { compareVersions } from '../releases/versions.ts';
import { derivedForm } from './derive.ts';
import { pinnedForms } from './edition.ts';
import { misfits } from './fit.ts';

type Places = (path: readonly PropertyKey[]) => At;

/**
 * Holds every clinic's edition to the releases that it is pinned to and to its own: pins that name a release in use,
 * nothing hidden or added that has no place any more, its own releases unedited, its versions high enough.
 */
export function guardClinics(root: string, library: Library, today?: string): Guarded {
  const shared = loadReleases(root).forms;
  const guarded = library.clinics.map((clinic) => guardClinic(root, library, clinic, shared, today));
  return {
    faults: sortFaults(guarded.flatMap(({ faults }) => faults)),
    warnings: guarded.flatMap(({ warnings }) => warnings),
  };
}

function guardClinic(
  root: string,
  library: Library,
  clinic: ClinicEdition,
  shared: ReleasedForms,
  today: string | undefined,
): Guarded {
  const folder = `${root.replace(/\/+$/, '')}/clinics/${clinic.id}`;
  const own = guardReleases(folder, undefined, today);
  const unfit = clinicFaults(root, clinic, shared);
  const drafts = unfit.length > 0 ? [] : releaseFaults(root, library, clinic, shared, folder);
  return {
    faults: [...own.faults, ...unfit, ...drafts],
    warnings: [...own.warnings, ...newerReleases(root, clinic, shared)],
  };
}

const fault = (at: At, message: string): Fault => ({ ...at, rule: 'clinic', message });

/** What of an edition does not fit the shared releases. */
export function clinicFaults(root: string, clinic: ClinicEdition, shared: ReleasedForms): Fault[] {
  const at = clinicPlaces(root, clinic.id);
  const pinned = pinnedForms(clinic, shared);
  const unfit = clinic.forms.flatMap((own, index) => {
    const base = pinned.get(own.form);
    const found = base === undefined ? [] : misfits(clinic, own, base);
    return found.map(({ path, message }) => fault(at(['forms', index, ...path]), message));
  });
  return [...pinFaults(clinic, shared, at), ...unfit, ...hiddenNowhere(clinic, pinned, at)];
}

function pinFaults({ pins }: ClinicEdition, shared: ReleasedForms, at: Places): Fault[] {
  return Object.entries(pins).flatMap(([id, version]) => {
    const releases = shared.get(id) ?? [];
    const form = releases.find((each) => each.version === version);
    const known = releases.map((each) => each.version).join(', ') || 'none';
    if (form === undefined)
      return [
        fault(at(['pins', id]), `There is no release ${version} of "${id}". Releases: ${known}. Pin one of them.`),
      ];
    if (form.withdrawal === undefined) return [];
    const instead = form.withdrawal.replacement ?? current(shared.get(id))?.version ?? 'none';
    return [
      fault(
        at(['pins', id]),
        `Release ${version} of "${id}" is withdrawn: ${form.withdrawal.reason} Release to pin instead: ${instead}.`,
      ),
    ];
  });
}

function hiddenNowhere({ hidden, forms }: ClinicEdition, pinned: ReadonlyMap<string, Form>, at: Places): Fault[] {
  const bases = forms.flatMap(({ form }) => pinned.get(form) ?? []);
  if (bases.length === 0) return [];
  const held = new Set(
    bases.flatMap(({ sections }) => sections.flatMap(({ items }) => items.map((item) => item.manoeuvre))),
  );
  const names = bases.map(({ id, version }) => `${id} ${version}`).join(', ');
  return hidden.flatMap((id, index) =>
    held.has(id)
      ? []
      : [fault(at(['hidden', index]), `The hidden manoeuvre "${id}" is on none of ${names}. Take it out of "hidden".`)],
  );
}

function newerReleases(root: string, { id: clinic, pins }: ClinicEdition, shared: ReleasedForms): Fault[] {
  const at = clinicPlaces(root, clinic);
  return Object.entries(pins).flatMap(([id, version]) => {
    const newest = current(shared.get(id))?.version;
    if (newest === undefined || compareVersions(newest, version) <= 0) return [];
    const message = `Release ${newest} of "${id}" is out; the edition is built on ${version}. Read what changed (npm run form -- diff ${id}@${version} ${id}@${newest}), then raise the pin.`;
    return [fault(at(['pins', id]), message)];
  });
}

function releaseFaults(
  root: string,
  library: Library,
  clinic: ClinicEdition,
  shared: ReleasedForms,
  folder: string,
): Fault[] {
  const at = clinicPlaces(root, clinic.id);
  const pinned = pinnedForms(clinic, shared);
  const { forms: released, releases } = loadReleases(folder);
  const lost = releases
    .filter(({ form }) => !clinic.forms.some((own) => own.form === form.id))
    .map(({ file, form }) =>
      fault(
        { file, line: 1, column: 1 },
        `The clinic has no form "${form.id}" any more. Keep it under "forms", and withdraw its releases instead.`,
      ),
    );
  const behind = clinic.forms.flatMap((own: ClinicForm, index) => {
    const [base, before] = [pinned.get(own.form), released.get(own.form)];
    if (base === undefined || before === undefined) return [];
    return draftFaults(derivedForm(library, clinic, own, base), before).map(({ key, message }) => ({
      ...fault(at(['forms', index, key === 'id' ? 'form' : key]), message),
      rule: 'release-version',
    }));
  });
  return [...lost, ...behind];
}
