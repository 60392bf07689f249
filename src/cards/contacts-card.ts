import type { Library } from '../../schemas/library.ts';
import { checkedWords, contactRows, contactsTitle, type ContactRow } from '../text/contacts.ts';
import { setQuotes } from '../text/set-runs.ts';
import type { Selection } from './select.ts';

/** The last card of a clinic's set, as the templates take it; no manoeuvre's, and fitted to nothing. */
export interface ContactsCard {
  title: string;
  /** Title of the set, and the clinic's name with the library's edition, for the foot. */
  set: string;
  edition: string;
  contacts: {
    name: string;
    /** Logo as SVG text. */
    drawing?: string;
    rows: ContactRow[];
    checked: string;
    /** The clinic's notes on the manoeuvres of the set. */
    notes: { title: string; words: string }[];
  };
}

/** Whom to call, with the clinic's notes on a set's manoeuvres; none in the shared library. */
export function contactsCards({ clinic, version }: Library, { set, manoeuvres }: Selection): ContactsCard[] {
  if (clinic === undefined) return [];
  const { name, drawing, notes } = clinic;
  const noted = manoeuvres.flatMap(({ id, title }) => {
    const words = notes[id];
    return words === undefined ? [] : [{ title: setQuotes(title), words: setQuotes(words) }];
  });
  const contacts = { name, rows: contactRows(clinic), checked: checkedWords(clinic), notes: noted };
  return [
    {
      ...{ title: contactsTitle(clinic), set: set.title },
      edition: `${clinic.short ?? name} v${version}`,
      contacts: { ...contacts, ...(drawing !== undefined && { drawing }) },
    },
  ];
}
