import { form as formSchema } from '../../schemas/form.ts';
import { clinicFolder, loadEdition } from '../forms/clinic/load.ts';
import { loadReleases } from '../forms/releases/load.ts';
import { frozenForm, refusals } from '../forms/releases/refusals.ts';
import { sealed } from '../forms/releases/release-file.ts';
import { clinicPlaces } from '../library/clinic/places.ts';
import { faultLine, type Fault } from '../library/faults.ts';
import { didYouMean } from '../library/suggest.ts';
import type { Outcome } from './form-note.ts';
import { followed, writeRelease } from './form-release.ts';

const refused = (faults: readonly Fault[]): Outcome => ({ text: faults.map(faultLine).join('\n'), code: 1 });

/** `form release FORM` with CLINIC: freezes the draft of the clinic's own form in the clinic's folder, or says what keeps it. */
export function clinicRelease(root: string, clinicId: string, id: string, today: string): Outcome {
  const { edition, faults } = loadEdition(root, clinicId);
  if (edition === undefined) return refused(faults);
  const { library, draft } = edition;
  const own = library.clinic?.forms.map(({ form }) => form) ?? [];
  const definition = library.forms.find((form) => form.id === id);
  if (definition === undefined || !own.includes(id))
    return {
      text: `"${id}" is no form of the clinic's own.${didYouMean(id, own)} Its forms: ${own.join(', ') || 'none'}. A shared form is released without CLINIC.`,
      code: 1,
    };
  const folder = clinicFolder(root, clinicId);
  const loaded = loadReleases(folder);
  // Contacts are printed as they are on the day: a release holds the form alone.
  const { clinic: _imprint, ...form } = draft(id);
  const at = clinicPlaces(root, clinicId);
  const wrong = refusals({ definition, draft: form, releases: loaded.forms.get(id), today });
  if (wrong.length > 0)
    return refused(
      wrong.map(({ key, message }) => ({
        ...at(['forms', own.indexOf(id), key === 'id' ? 'form' : key]),
        rule: 'release',
        message,
      })),
    );
  return writeRelease(folder, sealed(formSchema.parse(frozenForm(definition, form)), followed(loaded, definition)));
}
