/** The mark of PDF/UA-1 that the typesetter's build for browsers leaves out (ISO 14289-1, clauses 5 and 7.1). */
import { PDFDocument, PDFName, PDFRawStream } from '@cantoo/pdf-lib';
import { describe, expect, it } from 'vitest';
import { markAccessible } from '../../../src/pdf/form/accessible-mark.ts';

const head = '<rdf:Description xmlns:pdf="http://ns.adobe.com/pdf/1.3/" >';

/** A document with metadata and preferences as the typesetter writes them. */
async function document(metadata: string): Promise<PDFDocument> {
  const made = await PDFDocument.create();
  const { catalog, context } = made;
  catalog.set(
    PDFName.of('Metadata'),
    context.register(context.stream(new TextEncoder().encode(metadata), { Type: 'Metadata' })),
  );
  catalog.set(PDFName.of('ViewerPreferences'), context.obj({ Direction: 'L2R' }));
  return made;
}

describe('the mark of an accessible PDF', () => {
  it('stands in the metadata, and the title in the bar of the window', async () => {
    const made = await document(`${head}<dc:title>Größe</dc:title><xmpTPg:NPages>7</xmpTPg:NPages></rdf:Description>`);
    markAccessible(made);
    const stream = made.context.lookup(made.catalog.get(PDFName.of('Metadata')));
    if (!(stream instanceof PDFRawStream)) throw new Error('The metadata is no stream.');
    const text = new TextDecoder().decode(stream.contents);
    expect(text).toContain('xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"');
    expect(text).toContain('Größe</dc:title><pdfuaid:part>1</pdfuaid:part><xmpTPg:NPages>');
    expect(stream.dict.get(PDFName.of('Length'))?.toString()).toBe(String(stream.contents.length));
    const preferences = made.catalog.lookup(PDFName.of('ViewerPreferences'));
    expect(preferences?.toString().replace(/\s+/g, ' ')).toBe('<< /DisplayDocTitle true /Direction /L2R >>');
  });

  it('is not written into a document of another maker', async () => {
    const other = await document('<rdf:Description />');
    expect(() => markAccessible(other)).toThrow('not as expected');
    const none = await PDFDocument.create();
    expect(() => markAccessible(none)).toThrow('no metadata');
  });
});
