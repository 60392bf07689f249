import { PDFHexString, PDFName, type PDFContext, type PDFDict, type PDFObject, type PDFRef } from '@cantoo/pdf-lib';
import type { Appearances } from './appearances.ts';
import type { DrawnField } from './drawn-fields.ts';
import type { FieldSpec } from './field-spec.ts';
import { typingFontName } from './typing-font.ts';

/** What every field needs of its document. */
export interface WidgetParts {
  context: PDFContext;
  appearances: Appearances;
}

/** Field flags of ISO 32000-1, tables 226 to 230. */
const multilineFlag = 1 << 12;
const radioFlag = 1 << 15;
const comboFlag = 1 << 17;

/** Annotation flag 3, "print", of ISO 32000-1, table 165. */
const printed = 4;

/** Size 0: type as large as the field is high, smaller when the words are long, so that nothing typed is cut off. */
const fittedType = `/${typingFontName} 0 Tf 0 g`;
/** In a field of several lines type keeps one size, in points. */
const linesType = `/${typingFontName} 10 Tf 0 g`;

const words = (text: string): PDFHexString => PDFHexString.fromText(text);

const set = (dict: PDFDict, entries: { [key: string]: PDFObject | string | number | undefined }): void => {
  for (const [key, value] of Object.entries(entries)) {
    if (value !== undefined) dict.set(PDFName.of(key), dict.context.obj(value));
  }
};

/** Turns the link annotation into a widget without a field of its own yet. */
function toWidget({ annotation, pageRef }: DrawnField, tooltip: string, appearance: PDFDict): void {
  for (const key of ['A', 'Contents', 'Border', 'QuadPoints', 'Dest', 'H']) annotation.delete(PDFName.of(key));
  set(annotation, { Subtype: 'Widget', F: printed, P: pageRef, TU: words(tooltip), AP: appearance });
  annotation.set(PDFName.of('BS'), annotation.context.obj({ W: 0 }));
}

type FieldEntries = { [key: string]: PDFObject | string | number | undefined };

/** One field, drawn once: field and widget are one dictionary. */
function singleField(place: DrawnField, entries: FieldEntries): PDFRef {
  set(place.annotation, entries);
  return place.ref;
}

/** One field with several widgets, which are its kids. */
function sharedField({ context }: WidgetParts, places: readonly DrawnField[], entries: FieldEntries): PDFRef {
  const parent = context.obj({});
  set(parent, { ...entries, Kids: context.obj(places.map(({ ref }) => ref)) });
  const ref = context.register(parent);
  for (const { annotation } of places) annotation.set(PDFName.of('Parent'), ref);
  return ref;
}

function textField(
  parts: WidgetParts,
  spec: Extract<FieldSpec, { kind: 'text' }>,
  places: readonly [DrawnField, ...DrawnField[]],
): PDFRef {
  for (const place of places) toWidget(place, spec.tooltip, parts.appearances.text(place));
  const type = spec.multiline ? { Ff: multilineFlag, DA: words(linesType) } : { DA: words(fittedType) };
  const entries = { FT: 'Tx', T: words(spec.name), TU: words(spec.tooltip), ...type };
  return places.length === 1 ? singleField(places[0], entries) : sharedField(parts, places, entries);
}
