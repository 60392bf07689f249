import { PDFBool, PDFDict, type PDFDocument, PDFName, PDFRawStream } from '@cantoo/pdf-lib';

/** A name space declared before, and the element that the mark stands before, as Typst 0.14 writes them. */
const declared = 'xmlns:pdf="http://ns.adobe.com/pdf/1.3/" ';
const next = '<xmpTPg:NPages>';

/**
 * Writes into a document what Typst's own export does when asked for PDF/UA-1 (ISO 14289-1: clause 5, the mark in the
 * metadata; 7.1, the title in the window's bar): its build for browsers cannot be asked. The templates are the same, and
 * Node's export holds them against the standard. Throws when the document is not as Typst writes it.
 */
export function markAccessible(document: PDFDocument): void {
  markMetadata(document);
  const preferences = document.catalog.lookup(PDFName.of('ViewerPreferences'), PDFDict);
  const entries = preferences.entries();
  for (const [key] of entries) preferences.delete(key);
  preferences.set(PDFName.of('DisplayDocTitle'), PDFBool.True);
  for (const [key, value] of entries) preferences.set(key, value);
}

function markMetadata({ catalog, context }: PDFDocument): void {
  const reference = catalog.get(PDFName.of('Metadata'));
  const stream = context.lookup(reference);
  if (!(stream instanceof PDFRawStream)) throw new Error('The PDF has no metadata.');
  const text = new TextDecoder('utf-8', { ignoreBOM: true }).decode(stream.contents);
  if (!text.includes(declared) || !text.includes(next)) throw new Error('The metadata of the PDF is not as expected.');
  const marked = text
    .replace(declared, `${declared} xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/" `)
    .replace(next, `<pdfuaid:part>1</pdfuaid:part>${next}`);
  const bytes = new TextEncoder().encode(marked);
  stream.dict.set(PDFName.of('Length'), context.obj(bytes.length));
  Object.assign(stream, { contents: bytes });
}
