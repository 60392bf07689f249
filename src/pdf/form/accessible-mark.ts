import { PDFName, type PDFDocument, PDFRawStream } from '@cantoo/pdf-lib';

/** A name space declared before, and the element that the mark stands before, as Typst 0.14 writes them. */
const declared = 'xmlns:pdf="http://ns.adobe.com/pdf/1.3/" ';
const next = '<xmpTPg:NPages>';

/**
 * Writes into a document's metadata that it is PDF/UA-1, as Typst's own export does when asked to (ISO 14289-1, clause 5):
 * its build for browsers cannot be asked. The templates are the same, and Node's export holds them against the standard.
 * Throws when the metadata is not what Typst writes.
 */
export function markAccessible({ catalog, context }: PDFDocument): void {
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
