import type { Form } from '../../../schemas/form.ts';
import { library } from '../_data.ts';
import { inUse } from './_editions.ts';

/** The form that is to be used now, of each examination: what is filled in on screen and watched. */
export const currentForms: readonly Form[] = library.forms.map(({ id }) => inUse(id));
