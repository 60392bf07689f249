import type { ClinicEdition } from '../../../schemas/clinic.ts';
import type { Form } from '../../../schemas/form.ts';
import type { Library } from '../../../schemas/library.ts';
import { overlaidLibrary } from '../../library/clinic/overlay.ts';
import { buildForm } from '../form.ts';
import type { ReleasedForms, ReleasesOfForm } from '../releases/released-forms.ts';
import { compareVersions } from '../releases/versions.ts';
import { derivedForm } from './derive.ts';
import { imprinted } from './imprint.ts';

/** The content as one site has it: the shared library, or a clinic's edition of it. */
export interface ContentEdition {
  library: Library;
  /** Releases by form id, the clinic's own in place of the shared one's. */
  released: ReleasedForms;
  /** The draft of a form. Throws for an unknown one, and when the clinic's does not fit its shared form. */
  draft: (form: string) => Form;
}

/** The shared library as it stands. */
export const sharedEdition = (library: Library, released: ReleasedForms): ContentEdition => ({
  library,
  released,
  draft: (form) => buildForm(library, form),
});

/** The release that each shared form of a clinic is pinned to; a pin that names none is left out. */
export function pinnedForms({ pins }: ClinicEdition, shared: ReleasedForms): Map<string, Form> {
  return new Map(
    Object.entries(pins).flatMap(([id, version]) => {
      const form = shared.get(id)?.find((each) => each.version === version);
      return form === undefined ? [] : [[id, form] as const];
    }),
  );
}

/** A clinic's edition of the shared library: the same pages, its own forms, everything printed with its contacts. */
export function clinicEdition(
  library: Library,
  clinic: ClinicEdition,
  shared: ReleasedForms,
  own: ReleasedForms,
): ContentEdition {
  const pinned = pinnedForms(clinic, shared);
  const ownOf = (id: string) => clinic.forms.find(({ form }) => form === id);
  const draft = (id: string): Form => {
    const [made, base] = [ownOf(id), pinned.get(id)];
    if (base === undefined) return imprinted(buildForm(library, id), clinic);
    return imprinted(made === undefined ? base : derivedForm(library, clinic, made, base), clinic);
  };
  const releasesOf = (id: string): readonly Form[] => {
    if (ownOf(id) !== undefined) return own.get(id) ?? [];
    const last = pinned.get(id)?.version;
    return (shared.get(id) ?? []).filter(({ version }) => last === undefined || compareVersions(version, last) <= 0);
  };
  const released = library.forms.flatMap(({ id }): [string, ReleasesOfForm][] => {
    const [first, ...more] = releasesOf(id).map((form) => imprinted(form, clinic));
    return first === undefined ? [] : [[id, [first, ...more]]];
  });
  return { library: overlaidLibrary(library, clinic, pinned), released: new Map(released), draft };
}
