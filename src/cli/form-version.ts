import type { Form } from '../../schemas/form.ts';
import type { Library } from '../../schemas/library.ts';
import { loadEdition } from '../forms/clinic/load.ts';
import { loadReleases, type LoadedReleases } from '../forms/releases/load.ts';
import { current, type ReleasedForms } from '../forms/releases/released-forms.ts';
import { faultLine } from '../library/faults.ts';
import { loadLibrary } from '../library/load.ts';
import { didYouMean } from '../library/suggest.ts';
import type { Outcome } from './form-note.ts';

/** A form by its name: `FORM@VERSION`, `FORM@next` for the draft, or `FORM` for the one in use. Words when there is none. */
export function formOf(root: string, name: string, bare: 'in use' | 'next' = 'in use'): Form | Outcome {
  const clinic = process.env['CLINIC'];
  const { forms, faults } = clinic ? editionReleases(root, clinic) : loadReleases(root);
  if (faults.length > 0) return { text: faults.map(faultLine).join('\n'), code: 1 };
  const [id = '', version] = name.split('@');
  const released = forms.get(id);
  const asked = version ?? (bare === 'in use' ? current(released)?.version : undefined) ?? 'next';
  if (asked === 'next') return draftOf(root, id);
  const form = released?.find((each) => each.version === asked);
  return form ?? { text: missing(forms, id, asked), code: 1 };
}

function editionReleases(root: string, clinic: string): Pick<LoadedReleases, 'forms' | 'faults'> {
  const { edition, faults } = loadEdition(root, clinic);
  return { forms: edition?.released ?? new Map(), faults };
}

function missing(forms: ReleasedForms, id: string, version: string): string {
  const versions = forms.get(id)?.map((form) => form.version) ?? [];
  const known =
    versions.length > 0 ? `Releases: ${versions.join(', ')}; the draft is ${id}@next.` : 'It has no release.';
  return `There is no release ${version} of "${id}". ${known}`;
}

/** The draft of a form; words when the content has faults or no such form. */
export function draftOf(root: string, id: string): Form | Outcome {
  const { edition, faults } = loadEdition(root, process.env['CLINIC']);
  if (edition === undefined) return { text: faults.map(faultLine).join('\n'), code: 1 };
  const ids = edition.library.forms.map((form) => form.id);
  if (ids.includes(id)) return edition.draft(id);
  return { text: `There is no form "${id}".${didYouMean(id, ids)} Forms: ${ids.join(', ')}.`, code: 1 };
}

/** The Library of a content folder, or its faults one a line. */
export function libraryOf(root: string): Library | Outcome {
  const { library, faults } = loadLibrary(root, { keepTrees: true });
  return library ?? { text: faults.map(faultLine).join('\n'), code: 1 };
}
