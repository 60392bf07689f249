import type { Clinic, ClinicEdition } from '../../../schemas/clinic.ts';
import type { Form } from '../../../schemas/form.ts';
import type { FormDefinition } from '../../../schemas/form-definition.ts';
import type { Library } from '../../../schemas/library.ts';
import type { Manoeuvre } from '../../../schemas/manoeuvre.ts';
import { canonicalJson, sha256 } from '../hash.ts';
import { freeze } from '../link.ts';
import { titleOfOwn } from './names.ts';

/**
 * The library as a clinic's edition has it: its tools left out, its orders added, its examinations as its forms hold them.
 * `pinned` gives the release that each shared form is pinned to. Pages, cautions and red flags all stay.
 */
export function overlaidLibrary(library: Library, clinic: ClinicEdition, pinned: ReadonlyMap<string, Form>): Library {
  const left = new Set(clinic.toolsLeftOut);
  return freeze({
    ...library,
    clinic,
    hash: sha256(canonicalJson({ library: library.hash, clinic })),
    tools: library.tools.filter(({ id }) => !left.has(id)),
    guides: named(library.guides, library, left),
    protocols: named(library.protocols, library, left).map((protocol) => ({
      ...protocol,
      manoeuvres: protocol.manoeuvres.map((one) => ordered(one, clinic)),
    })),
    forms: library.forms.map((form) => overlaidForm(form, library, clinic, pinned.get(form.id))),
  });
}

/** A reference to a tool that is left out becomes the tool's name: there is no page to lead to. */
function named<T>(part: T, { tools }: Library, left: ReadonlySet<string>): T {
  if (left.size === 0) return part;
  const walk = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(walk);
    if (typeof value !== 'object' || value === null) return value;
    const { type, id } = value as { type?: unknown; id?: unknown };
    const tool = type === 'measure' && tools.find((each) => each.id === id && left.has(each.id));
    if (tool) return { type: 'text', text: tool.title };
    return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, walk(each)]));
  };
  return walk(part) as T;
}

function ordered(one: Manoeuvre, { order }: Clinic): Manoeuvre {
  const added = order.filter(({ manoeuvre, after }) => manoeuvre === one.id && !one.after.includes(after));
  return added.length === 0 ? one : { ...one, after: [...one.after, ...added.map(({ after }) => after)] };
}

const signedBy = (signOff: FormDefinition['signOff']): Pick<FormDefinition, 'signOff'> =>
  signOff === undefined ? {} : { signOff };

/** The examination that a pinned form is of: what the pinned release holds, without what the clinic's form leaves out. */
function overlaidForm(form: FormDefinition, library: Library, clinic: Clinic, pinned?: Form): FormDefinition {
  if (pinned === undefined) return form;
  const own = clinic.forms.find((each) => each.form === form.id);
  const hidden = new Set(own === undefined ? [] : [...clinic.hidden, ...own.hidden]);
  const known = new Set(library.protocols.flatMap(({ manoeuvres }) => manoeuvres.map(({ id }) => id)));
  const held = pinned.sections.flatMap(({ items }) => items.map(({ manoeuvre }) => manoeuvre));
  const { title, purpose, leavesOut, mustNotMiss, url, version } = pinned;
  const { signOff, ...unsigned } = form;
  return {
    ...unsigned,
    ...signedBy(own === undefined ? signOff : own.signOff),
    ...{ title, purpose, leavesOut, mustNotMiss, url, version },
    ...(own && { url: own.url, version: own.version, author: own.author, drafted: own.drafted }),
    ...(own && { title: titleOfOwn(clinic, own, title) }),
    scopes: [],
    manoeuvres: held.filter((id) => known.has(id) && !hidden.has(id)),
  };
}
