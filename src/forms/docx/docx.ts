import { Document, type ISectionOptions, Packer } from 'docx';
import type { Form } from '../../../schemas/form.ts';
import { formSafety } from '../edition.ts';
import { numbered } from '../paper/numbering.ts';
import { unzipped, zipped } from '../zip.ts';
import { annexParts } from './annex.ts';
import { annexHeader, footer, formHeader } from './edge.ts';
import { sectionParts } from './item.ts';
import { numbering, page, styles } from './look.ts';
import { closingParts, openingParts } from './opening.ts';

/**
 * The form as an Office Open XML document (.docx) on A4, to adapt in a word processor: real headings, tables whose heads
 * repeat, and a content control for every blank, tagged with its linkId. The same form, the same bytes.
 * Throws RangeError for a linkId that is too long for a tag.
 */
export async function formDocx(form: Form): Promise<Uint8Array<ArrayBuffer>> {
  const document = new Document({
    ...{ title: form.title, subject: form.purpose, creator: form.publisher, lastModifiedBy: form.publisher },
    ...{ description: `${form.url} version ${form.version}. ${formSafety} ${form.copyright}`, revision: 1 },
    keywords: form.hash,
    styles,
    numbering,
    sections: sectionsOf(form),
  });
  return withoutClock(new Uint8Array(await Packer.toArrayBuffer(document)), form.date);
}

function sectionsOf(form: Form): ISectionOptions[] {
  const all = numbered(form);
  const annex = annexParts(form, all);
  const properties = { page };
  const main = [
    ...openingParts(form, annex.length > 0),
    ...form.sections.flatMap((section) => sectionParts(section, all)),
    ...closingParts(form),
  ];
  const filled = { properties, headers: { default: formHeader(form) }, footers: { default: footer() }, children: main };
  if (annex.length === 0) return [filled];
  const read = { properties, headers: { default: annexHeader(form) }, footers: { default: footer() }, children: annex };
  return [filled, read];
}

/** The library stamps documents with the time of the clock: the form's own date stands in its place, in the archive too. */
function withoutClock(docx: Uint8Array, day: string): Uint8Array<ArrayBuffer> {
  const files = unzipped(docx).map(({ path, bytes }) => {
    if (path !== 'docProps/core.xml') return { path, bytes };
    const dated = new TextDecoder().decode(bytes).replaceAll(/\d{4}-\d{2}-\d{2}T[\d:.]+Z/g, `${day}T00:00:00Z`);
    return { path, bytes: new TextEncoder().encode(dated) };
  });
  return zipped(files.toSorted((a, b) => place(a) - place(b)));
}

/** Programs tell a document's type by the first file of its archive. */
const place = ({ path }: { path: string }): number => (path === '[Content_Types].xml' ? 0 : 1);
