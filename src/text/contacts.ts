import type { Urgency } from '../../schemas/common.ts';
import type { Library } from '../../schemas/library.ts';
import { urgencies, urgencyWords } from './words.ts';

/** What of a clinic says whom to call; the Library's clinic and a form's imprint both do. */
export type Contacts = Pick<
  NonNullable<Library['clinic']>,
  'id' | 'name' | 'short' | 'contacts' | 'safeguarding' | 'selfHarm' | 'contactsChecked'
>;

/** Whom to call for one thing. A part that is missing was not given: a blank line on paper, "not given: ask" on a page. */
export interface ContactRow {
  /** Urgency; none for what is not a red flag. */
  urgency?: Urgency;
  /** "Now", "Safeguarding". */
  lead: string;
  /** By day and out of hours, or at any hour: each with its words where they are given. */
  lines: { when: 'by day' | 'out of hours' | 'at any hour'; who?: string }[];
}

/** On a page, where a contact is not given. */
export const notGiven = 'not given: ask';

const line = (when: ContactRow['lines'][number]['when'], who: string | undefined): ContactRow['lines'][number] => ({
  when,
  ...(who !== undefined && { who }),
});

/** Whom to call for a red flag of this urgency. */
export function contactFor({ contacts }: Contacts, urgency: Urgency): ContactRow {
  const given = contacts.find((contact) => contact.urgency === urgency);
  const { label } = urgencyWords[urgency];
  return { urgency, lead: label, lines: [line('by day', given?.day), line('out of hours', given?.outOfHours)] };
}

/** Everything that a clinic says of whom to call: by urgency, then safeguarding and risk of self-harm. */
export function contactRows(clinic: Contacts): ContactRow[] {
  return [
    ...urgencies.map((urgency) => contactFor(clinic, urgency)),
    { lead: 'Safeguarding', lines: [line('at any hour', clinic.safeguarding)] },
    { lead: 'Risk of self-harm', lines: [line('at any hour', clinic.selfHarm)] },
  ];
}

/** A row as a sentence, with `blank` where nothing is given: "Now: by day ext. 0000; out of hours ____." */
export function contactSentence({ lead, lines }: ContactRow, blank: string): string {
  const parts = lines.map(({ when, who }) => (when === 'at any hour' ? (who ?? blank) : `${when} ${who ?? blank}`));
  return `${lead}: ${parts.join('; ').replace(/\.$/, '')}.`;
}

/** Head of the list: "Whom to call at Tarnwick". */
export const contactsTitle = (clinic: Contacts): string => `Whom to call at ${clinic.short ?? clinic.name}`;

/** Since when the contacts are known to be right. */
export const checkedWords = ({ contactsChecked }: Contacts): string =>
  contactsChecked === undefined
    ? 'Not said when these were last checked: ring them before you rely on them.'
    : `Contacts checked on ${contactsChecked}.`;
