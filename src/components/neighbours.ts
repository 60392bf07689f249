import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';

/** The entries before and after one, in the order of the whole library. */
export interface Neighbours {
  previous?: Manoeuvre;
  next?: Manoeuvre;
}

/** Returns the neighbours of every manoeuvre, by id. */
export function neighboursOf(library: Pick<Library, 'protocols'>): Map<string, Neighbours> {
  const all = library.protocols.flatMap(({ manoeuvres }) => manoeuvres);
  return new Map(all.map(({ id }, i) => [id, { ...named('previous', all[i - 1]), ...named('next', all[i + 1]) }]));
}

function named(name: keyof Neighbours, manoeuvre: Manoeuvre | undefined): Neighbours {
  return manoeuvre === undefined ? {} : { [name]: manoeuvre };
}

/** Returns the forms that hold a manoeuvre, by its scope or by its id. */
export function formsHolding(manoeuvre: Manoeuvre, { forms }: Pick<Library, 'forms'>): Library['forms'] {
  return forms.filter((form) => form.scopes.includes(manoeuvre.scope) || form.manoeuvres.includes(manoeuvre.id));
}

/** Returns the card sets that hold a manoeuvre. */
export function cardSetsHolding(manoeuvre: Manoeuvre, { cardSets }: Pick<Library, 'cardSets'>): Library['cardSets'] {
  return cardSets.filter(
    ({ system, scopes }) => system === manoeuvre.system && (scopes === undefined || scopes.includes(manoeuvre.scope)),
  );
}
