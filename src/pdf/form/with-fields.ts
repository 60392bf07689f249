import { PDFDocument, PDFHexString, PDFName, type PDFRef } from '@cantoo/pdf-lib';
import { appearancesIn } from './appearances.ts';
import { drawingFaults } from './drawing-faults.ts';
import { type DrawnField, drawnFields } from './drawn-fields.ts';
import { type FieldSpec, refuse, specFaults } from './field-spec.ts';
import { makeField } from './fields.ts';
import { structureParents, tagAsForm } from './structure.ts';
import { embedTypingFont, type TypingFont, typingFontName } from './typing-font.ts';
import { fittedType } from './widgets.ts';
import { writtenPdf } from './written-pdf.ts';

/** What a screen reader says of a widget is what its tooltip says. */
function tagWidgets(document: PDFDocument, drawn: readonly DrawnField[]): void {
  const parents = structureParents(document);
  for (const { annotation } of drawn)
    tagAsForm(annotation, parents, annotation.lookup(PDFName.of('TU'), PDFHexString).decodeText());
}

/** Fields are reached with the tab key in the order of the structure. */
function setTabOrder(document: PDFDocument): void {
  for (const page of document.getPages()) page.node.set(PDFName.of('Tabs'), PDFName.of('S'));
}

function makeFields({ context }: PDFDocument, specs: readonly FieldSpec[], drawn: readonly DrawnField[]): PDFRef[] {
  const places = Map.groupBy(drawn, ({ name }) => name);
  const maker = { context, appearances: appearancesIn(context) };
  return specs.flatMap((spec) => {
    const [first, ...more] = places.get(spec.name) ?? [];
    // Only an optional field can be undrawn here: any other was refused.
    return first ? [makeField(maker, spec, [first, ...more])] : [];
  });
}

function addAcroForm({ catalog, context }: PDFDocument, fields: PDFRef[], typing: TypingFont): void {
  const font = embedTypingFont(context, typing);
  const resources = { Font: { [typingFontName]: font } };
  const form = context.obj({ Fields: fields, DR: resources, DA: fittedType });
  catalog.set(PDFName.of('AcroForm'), context.register(form));
}

/** What a form pass needs beside the document and its fields. */
export interface FormPass {
  /** The font that fields are typed in. */
  font: TypingFont;
  /** What else is done to the document as it was read. */
  prepare?: (document: PDFDocument) => void;
}

/** The form pass without anything of Node, for a browser too: see addFormFields. */
export async function withFields(
  pdf: Uint8Array,
  specs: readonly FieldSpec[],
  { font, prepare }: FormPass,
): Promise<Uint8Array<ArrayBuffer>> {
  refuse(specFaults(specs));
  const document = await PDFDocument.load(pdf, { updateMetadata: false, parseSpeed: Infinity });
  prepare?.(document);
  const drawn = drawnFields(document);
  refuse(drawingFaults(specs, drawn));
  const fields = makeFields(document, specs, drawn);
  tagWidgets(document, drawn);
  setTabOrder(document);
  addAcroForm(document, fields, font);
  return writtenPdf(document);
}
