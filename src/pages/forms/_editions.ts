import type { Form } from '../../../schemas/form.ts';
import { current, newest, standingOf, type Standing } from '../../forms/releases/released-forms.ts';
import { edition, library } from '../_data.ts';

/** One version of a form as the site offers it. */
export interface Edition {
  form: Form;
  /** Last part of its address: the version, or `next` for the draft. */
  at: string;
  standing: Standing | 'draft';
  /** The release before it. */
  before?: Form | undefined;
}

const { released } = edition;

/** Every form's draft, built once. */
export const draftForms: readonly Form[] = library.forms.map(({ id }) => edition.draft(id));

function releasesOf(id: string): Edition[] {
  const all = released.get(id) ?? [];
  return all.map((form, index) => {
    return { form, at: form.version, standing: standingOf(form, released.get(id) ?? [form]), before: all[index - 1] };
  });
}

/** The draft of a form, where it asks or says anything that its newest release does not. */
function draftOf(id: string): Edition[] {
  const all = released.get(id);
  const before = all && newest(all);
  return draftForms
    .filter((form) => form.id === id && form.hash !== before?.hash)
    .map((form) => ({ form, at: 'next', standing: 'draft', before }));
}

const byForm = new Map(library.forms.map(({ id }) => [id, [...releasesOf(id), ...draftOf(id)].reverse()]));

/** The versions of a form, newest first, its draft before them where there is one. */
export const editionsOf = (id: string): readonly Edition[] => byForm.get(id) ?? [];

/** Every version of every form. */
export const allEditions: readonly Edition[] = [...byForm.values()].flat();

/** The version to use of a form: the newest release that is not withdrawn, else the draft. */
export function inUse(id: string): Form {
  const form = current(released.get(id)) ?? draftForms.find((draft) => draft.id === id);
  if (form === undefined) throw new Error(`There is no form "${id}".`);
  return form;
}
