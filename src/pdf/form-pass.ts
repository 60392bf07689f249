import { PDFDocument, PDFHexString, PDFName, type PDFRef } from '@cantoo/pdf-lib';
import { appearancesIn } from './form/appearances.ts';
import { drawingFaults } from './form/drawing-faults.ts';
import { type DrawnField, drawnFields } from './form/drawn-fields.ts';
import { type FieldSpec, refuse, specFaults } from './form/field-spec.ts';
import { makeField } from './form/fields.ts';
import { structureParents, tagAsForm } from './form/structure.ts';
import { embedTypingFont, typingFontName } from './form/typing-font.ts';
import { fittedType } from './form/widgets.ts';
import { writtenPdf } from './form/written-pdf.ts';

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

async function addAcroForm({ catalog, context }: PDFDocument, fields: PDFRef[]): Promise<void> {
  const font = await embedTypingFont(context);
  const resources = { Font: { [typingFontName]: font } };
  const form = context.obj({ Fields: fields, DR: resources, DA: fittedType });
  catalog.set(PDFName.of('AcroForm'), context.register(form));
}

/**
 * Turns each tagged link to `field:…` of a PDF into the widget of a form field: the same input, the same bytes.
 * Every field of `specs` must be drawn once, each answer of a radio group too.
 * Rejects with FormFieldError, which lists every fault, when a name is malformed, doubled, unknown or not drawn.
 */
export async function addFormFields(pdf: Uint8Array, specs: readonly FieldSpec[]): Promise<Uint8Array> {
  refuse(specFaults(specs));
  const document = await PDFDocument.load(pdf, { updateMetadata: false, parseSpeed: Infinity });
  const drawn = drawnFields(document);
  refuse(drawingFaults(specs, drawn));
  const fields = makeFields(document, specs, drawn);
  tagWidgets(document, drawn);
  setTabOrder(document);
  await addAcroForm(document, fields);
  return writtenPdf(document);
}
