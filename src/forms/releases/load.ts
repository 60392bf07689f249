import { withdrawalEntry, type WithdrawalEntry } from '../../../schemas/sign-off.ts';
import type { Entry, Report } from '../../library/content.ts';
import { faultLine, type Fault } from '../../library/faults.ts';
import type { ContentFile } from '../../library/read.ts';
import { readReleased } from '../../library/read.ts';
import { readList } from '../../library/yaml-table.ts';
import { readRelease, type Release } from './release-file.ts';
import { releasedForms, type ReleasedForms } from './released-forms.ts';

/** A release with its file. */
export interface ReleaseOnFile extends Release {
  file: string;
}

/** The folder of releases as read. */
export interface LoadedReleases {
  releases: ReleaseOnFile[];
  withdrawals: Entry<WithdrawalEntry>[];
  /** Every release, withdrawn ones marked. */
  forms: ReleasedForms;
  faults: Fault[];
}

const withdrawnFile = 'forms/released/withdrawn.yaml';

/** Reads the frozen releases of a content folder and what was withdrawn of them. Nothing is thrown for bad content. */
export function loadReleases(root: string): LoadedReleases {
  const { files, faults } = readReleased(root);
  const report: Report = (at, rule, message) => void faults.push({ ...at, rule, message });
  const withdrawals = files
    .filter(({ path }) => path === withdrawnFile)
    .flatMap((file) => readList(file, withdrawalEntry, report));
  const releases = files.filter(({ path }) => path !== withdrawnFile).flatMap((file) => releaseOf(file, report) ?? []);
  const forms = releasedForms(
    releases,
    withdrawals.map(({ value }) => value),
  );
  return { releases, withdrawals, forms, faults };
}

function releaseOf({ file, path, text }: ContentFile, report: Report): ReleaseOnFile | undefined {
  const name = path.slice(path.lastIndexOf('/') + 1);
  if (!/^[a-z0-9-]+@\d+\.\d+\.\d+\.json$/.test(name)) {
    const message = 'This is no release. Releases are called FORM@VERSION.json; withdrawals stand in withdrawn.yaml.';
    report({ file, line: 1, column: 1 }, 'released', message);
    return undefined;
  }
  const { release, faults } = readRelease(file, name, text);
  for (const { rule, message, ...at } of faults) report(at, rule, message);
  return release && { ...release, file };
}

/** Every release of a content folder whose releases must be sound; throws one error that lists every fault. */
export function requireReleases(root: string): ReleasedForms {
  const { forms, faults } = loadReleases(root);
  if (faults.length === 0) return forms;
  throw new Error(`The released forms have ${faults.length} faults:\n${faults.map(faultLine).join('\n')}`);
}
