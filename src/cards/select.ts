import type { CardSet } from '../../schemas/card-set.ts';
import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import type { Protocol } from '../../schemas/protocol.ts';

/** What a set of cards is made from: its manoeuvres in page order, and the page that holds them. */
export interface Selection {
  set: CardSet;
  protocol: Protocol;
  manoeuvres: Manoeuvre[];
}

/**
 * The manoeuvres of a card set, in the order in which its page has them.
 * Throws when no set has the id, no page holds its system, or its scopes leave nothing.
 */
export function selectCards(library: Library, setId: string): Selection {
  const set = library.cardSets.find(({ id }) => id === setId);
  if (!set) throw new RangeError(`no card set has the id "${setId}"`);
  const protocol = library.protocols.find(({ system }) => system === set.system);
  if (!protocol) throw new RangeError(`card set "${setId}" names the system "${set.system}", which has no page`);
  const manoeuvres = protocol.manoeuvres.filter(({ scope }) => set.scopes?.includes(scope) ?? true);
  if (manoeuvres.length === 0) throw new RangeError(`card set "${setId}" holds no manoeuvre of its scopes`);
  return { set, protocol, manoeuvres };
}

/** Card sets that can be made: those whose system has a page. */
export function cardSetsOf(library: Library): CardSet[] {
  return library.cardSets.filter(({ system }) => library.protocols.some((protocol) => protocol.system === system));
}
