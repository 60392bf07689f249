import type { Form } from '../../../schemas/form.ts';
import { checkedWords, contactRows, contactSentence, contactsTitle, type ContactRow } from '../../text/contacts.ts';

/** A clinic's name, logo and contacts as a template takes them. */
export interface SheetClinic {
  name: string;
  /** Logo as SVG text. */
  drawing?: string;
  title: string;
  rows: ContactRow[];
  checked: string;
}

/** Whom to call, for the head of a printed form; nothing on the shared library's. */
export function sheetClinic({ clinic }: Form): { clinic?: SheetClinic } {
  if (clinic === undefined) return {};
  const { name, drawing } = clinic;
  const words = { name, title: contactsTitle(clinic), rows: contactRows(clinic), checked: checkedWords(clinic) };
  return { clinic: { ...words, ...(drawing !== undefined && { drawing }) } };
}

/** Room to write a contact in plain text. */
const blank = '____________________';

/** The same as sentences, head first; none on the shared library's. */
export function contactWords({ clinic }: Form): string[] {
  if (clinic === undefined) return [];
  const rows = contactRows(clinic).map((row) => contactSentence(row, blank));
  return [`${contactsTitle(clinic)}:`, ...rows, checkedWords(clinic)];
}
