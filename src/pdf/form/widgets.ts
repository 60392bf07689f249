import { PDFHexString, PDFName, PDFString, type PDFContext, type PDFDict, type PDFObject } from '@cantoo/pdf-lib';
import type { DrawnField } from './drawn-fields.ts';
import { typingFontName } from './typing-font.ts';

/** Entries of a PDF dictionary; a plain string becomes a PDF name. */
export interface Entries {
  [key: string]: PDFObject | Entries | readonly (PDFObject | number)[] | string | number | undefined;
}

/** Annotation flag 3, "print", of ISO 32000-1, table 165. */
const printed = 4;

/** Type of one size, in points. */
export const typeOf = (size: number): PDFString => PDFString.of(`/${typingFontName} ${size} Tf 0 g`);

/** Size 0: type as large as the field is high, smaller when the words are long, so that nothing typed is cut off. */
export const fittedType = typeOf(0);

/** In a field of several lines type keeps one size. */
export const linesType = typeOf(10);

/** Words as a PDF text string of any alphabet. */
export const words = (text: string): PDFHexString => PDFHexString.fromText(text);

/** Puts entries into a dictionary; an undefined one is left out. */
export function setEntries(dict: PDFDict, context: PDFContext, entries: Entries): void {
  for (const [key, value] of Object.entries(entries)) {
    if (value !== undefined) dict.set(PDFName.of(key), context.obj(value as Parameters<PDFContext['obj']>[0]));
  }
}

/** Turns a link annotation into a widget: what makes it a link goes, what makes it fillable comes. */
export function toWidget(place: DrawnField, context: PDFContext, tooltip: string, appearance: Entries): void {
  const { annotation, pageRef } = place;
  for (const key of ['A', 'Border', 'Contents', 'QuadPoints']) annotation.delete(PDFName.of(key));
  const widget = { Subtype: 'Widget', F: printed, P: pageRef, TU: words(tooltip), BS: { W: 0 } };
  setEntries(annotation, context, { ...widget, ...appearance });
}
