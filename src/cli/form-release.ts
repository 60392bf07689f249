import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { form as formSchema } from '../../schemas/form.ts';
import type { FormDefinition } from '../../schemas/form-definition.ts';
import { buildForm } from '../forms/form.ts';
import { questionnaire } from '../forms/questionnaire.ts';
import { type DraftFault } from '../forms/releases/draft-faults.ts';
import { loadReleases, type LoadedReleases } from '../forms/releases/load.ts';
import { frozenForm, refusals } from '../forms/releases/refusals.ts';
import { releaseFileName, type Release, releaseText, sealed } from '../forms/releases/release-file.ts';
import { newest } from '../forms/releases/released-forms.ts';
import { definitionPlace } from '../library/definition-place.ts';
import { faultLine } from '../library/faults.ts';
import { didYouMean } from '../library/suggest.ts';
import { clinicRelease } from './clinic-release.ts';
import type { Outcome } from './form-note.ts';
import { libraryOf } from './form-version.ts';

/** `form release FORM`: freezes the draft as a file that never changes, or says all that keeps it from being released. */
export function formRelease(root: string, id: string, today = new Date().toISOString().slice(0, 10)): Outcome {
  if (process.env['CLINIC']) return clinicRelease(root, process.env['CLINIC'], id, today);
  const library = libraryOf(root);
  if ('text' in library) return library;
  const definition = library.forms.find((form) => form.id === id);
  const ids = library.forms.map((form) => form.id);
  if (definition === undefined)
    return { text: `There is no form "${id}".${didYouMean(id, ids)} Forms: ${ids.join(', ')}.`, code: 1 };
  const loaded = loadReleases(root);
  if (loaded.faults.length > 0) return { text: loaded.faults.map(faultLine).join('\n'), code: 1 };
  const draft = buildForm(library, id);
  const faults = refusals({ definition, draft, releases: loaded.forms.get(id), today });
  if (faults.length > 0) return { text: faults.map((fault) => refusal(root, id, fault)).join('\n'), code: 1 };
  return writeRelease(root, sealed(formSchema.parse(frozenForm(definition, draft)), followed(loaded, definition)));
}

const refusal = (root: string, id: string, { key, message }: DraftFault): string =>
  faultLine({ ...definitionPlace(root, id, key), rule: 'release', message });

/** The release that a new one follows. */
export function followed({ releases, forms }: LoadedReleases, { id }: FormDefinition): Release['follows'] {
  const all = forms.get(id);
  const last = all && releases.find(({ form }) => form.id === id && form.version === newest(all).version);
  return last && { version: last.form.version, seal: last.seal };
}

/** Writes a release's file; words when its version is there already. */
export function writeRelease(root: string, release: Release): Outcome {
  questionnaire(release.form);
  const folder = join(root, 'forms/released');
  const path = join(folder, releaseFileName(release.form));
  if (existsSync(path)) return { text: `${path}:1:1  This version is released already. Raise the version.`, code: 1 };
  mkdirSync(folder, { recursive: true });
  writeFileSync(path, releaseText(release), { flag: 'wx' });
  return { text: path, code: 0 };
}
