import type { Library } from '../../../schemas/library.ts';
import { chosenClinic, clinicFault } from '../../library/clinic/choose.ts';
import { faultLine, type Fault } from '../../library/faults.ts';
import { loadLibrary } from '../../library/load.ts';
import { loadReleases } from '../releases/load.ts';
import { clinicEdition, type ContentEdition, sharedEdition } from './edition.ts';
import { clinicFaults } from './guard.ts';

/** Folder of a clinic: its forms' releases lie in it as the shared ones do in the content folder. */
export const clinicFolder = (root: string, clinic: string): string => `${root.replace(/\/+$/, '')}/clinics/${clinic}`;

/** The content as a clinic has it, or the shared content without a name; every fault when it cannot be had. */
export function loadEdition(root: string, name: string | undefined): { edition?: ContentEdition; faults: Fault[] } {
  const { library, faults } = loadLibrary(root, { keepTrees: true });
  if (library === undefined) return { faults };
  const unknown = clinicFault(
    library.clinics.map(({ id }) => id),
    name,
  );
  if (unknown !== undefined)
    return { faults: [{ file: `${root}/clinics`, line: 1, column: 1, rule: 'clinic', message: unknown }] };
  return editionOf(root, library, name);
}

function editionOf(
  root: string,
  library: Library,
  name: string | undefined,
): { edition?: ContentEdition; faults: Fault[] } {
  const shared = loadReleases(root);
  const clinic = chosenClinic(library, name);
  if (clinic === undefined)
    return shared.faults.length > 0
      ? { faults: shared.faults }
      : { edition: sharedEdition(library, shared.forms), faults: [] };
  const own = loadReleases(clinicFolder(root, clinic.id));
  const faults = [...shared.faults, ...own.faults, ...clinicFaults(root, clinic, shared.forms)];
  return faults.length > 0 ? { faults } : { edition: clinicEdition(library, clinic, shared.forms, own.forms), faults };
}

/** The same for content that must be sound. Throws one error that lists every fault. */
export function requireEdition(root: string, name: string | undefined): ContentEdition {
  const { edition, faults } = loadEdition(root, name);
  if (edition !== undefined) return edition;
  throw new Error(`The content has ${faults.length} faults:\n${faults.map(faultLine).join('\n')}`);
}
