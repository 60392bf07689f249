import type { Form } from '../../schemas/form.ts';
import type { FormDefinition } from '../../schemas/form-definition.ts';
import type { Library } from '../../schemas/library.ts';
import { buildForm } from '../forms/form.ts';
import { canonicalJson, sha256 } from '../library/hash.ts';
import { planRequest } from '../plan/plan.ts';
import { stockRequest } from '../plan/stock-request.ts';
import { unnamed } from './make-definition.ts';

/** A form as made, with the definition that makes it again. */
export interface MadeForm {
  definition: FormDefinition;
  form: Form;
  /** Seconds of its run sheet. */
  seconds: number;
}

/** Builds the form of a definition, and names it where its maker gave no name. Throws as buildForm does. */
export function madeForm(library: Library, asked: FormDefinition): MadeForm {
  const plan = planned(library, asked);
  const built = (definition: FormDefinition): Form =>
    buildForm(withForm(library, definition), definition.id, () => plan.steps);
  const definition = asked.url === unnamed ? { ...asked, url: nameOf(built(asked)) } : asked;
  return { definition, form: built(definition), seconds: plan.totals.seconds };
}

const withForm = (library: Library, definition: FormDefinition): Library => ({
  ...library,
  forms: [...library.forms, definition],
});

function planned(library: Library, definition: FormDefinition): ReturnType<typeof planRequest> {
  // Without a limit of time, as the site's own forms are ordered: the same choice gives the same form everywhere.
  const plan = planRequest(withForm(library, definition), stockRequest(definition), { milliseconds: Infinity });
  if (plan.leftOut.length === 0) return plan;
  throw new Error(`The run sheet can't hold ${plan.leftOut.map(({ manoeuvre }) => manoeuvre).join(', ')}.`);
}

/**
 * A permanent name made of what the form asks and who publishes it: a UUID of version 8 (RFC 9562, 5.8 and appendix
 * B.2) from the SHA-256 of its content's hash, version and publisher. The same form has the same name, any other another.
 */
function nameOf({ hash, version, publisher }: Form): string {
  const digits = sha256(canonicalJson({ hash, version, publisher }));
  const variant = ((Number.parseInt(digits.charAt(16), 16) & 3) | 8).toString(16);
  const parts = [digits.slice(0, 8), digits.slice(8, 12), `8${digits.slice(13, 16)}`];
  return `urn:uuid:${[...parts, `${variant}${digits.slice(17, 20)}`, digits.slice(20, 32)].join('-')}`;
}
