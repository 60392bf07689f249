import {
  PDFCatalog,
  type PDFDocument,
  PDFName,
  type PDFObject,
  PDFPageLeaf,
  PDFPageTree,
  type PDFRef,
  PDFStream,
} from '@cantoo/pdf-lib';
import { zlibSync } from 'fflate';

type Indirect = [PDFRef, PDFObject];

/** Objects in one stream: larger streams compress better, smaller ones open faster. */
const objectsInStream = 400;

/** A place of an object, ISO 32000-1, table 18: at an offset, or as the nth of an object stream. */
type Entry = { kind: 1; offset: number } | { kind: 2; stream: number; index: number };

const ascii = new TextEncoder();

/**
 * The document as PDF 1.7 with object streams and a cross-reference stream (ISO 32000-1, 7.5.7 and 7.5.8), the same
 * objects, the same bytes. The library's own writer keeps its table sorted by searching it for every object: with the
 * ten thousand of a form that took longer than all else.
 */
export function writtenPdf({ context }: PDFDocument): Uint8Array<ArrayBuffer> {
  const objects = context.enumerateIndirectObjects().filter(([, object]) => !isTable(object));
  const alone = objects.filter(([, object]) => standsAlone(object));
  const packed = objects.filter(([, object]) => !standsAlone(object));
  let next = context.largestObjectNumber + 1;
  const entries = new Map<number, Entry>();
  const out = new Bytes();
  out.text('%PDF-1.7\n%\u00e2\u00e3\u00cf\u00d3\n');
  for (const [ref, object] of alone) entries.set(ref.objectNumber, writeObject(out, ref.objectNumber, bytesOf(object)));
  for (let from = 0; from < packed.length; from += objectsInStream) {
    const chunk = packed.slice(from, from + objectsInStream);
    const number = next++;
    chunk.forEach(([ref], index) => entries.set(ref.objectNumber, { kind: 2, stream: number, index }));
    entries.set(number, writeObject(out, number, objectStream(chunk)));
  }
  writeTable(out, context.trailerInfo, entries, next);
  return out.all();
}

/** Tables and object streams of the document as it was read: what they held is among the objects. */
function isTable(object: PDFObject): boolean {
  if (!(object instanceof PDFStream)) return false;
  const type = object.dict.get(PDFName.of('Type'));
  return type === PDFName.of('XRef') || type === PDFName.of('ObjStm');
}

const standsAlone = (object: PDFObject): boolean =>
  object instanceof PDFStream ||
  object instanceof PDFCatalog ||
  object instanceof PDFPageTree ||
  object instanceof PDFPageLeaf;

function bytesOf(object: PDFObject): Uint8Array {
  const bytes = new Uint8Array(object.sizeInBytes());
  object.copyBytesInto(bytes, 0);
  return bytes;
}

function writeObject(out: Bytes, number: number, bytes: Uint8Array): Entry {
  const offset = out.length;
  out.text(`${number} 0 obj\n`);
  out.push(bytes);
  out.text('\nendobj\n\n');
  return { kind: 1, offset };
}

function objectStream(chunk: readonly Indirect[]): Uint8Array {
  const body = new Bytes();
  const numbers = chunk.map(([ref, object]) => {
    const at = `${ref.objectNumber} ${body.length}`;
    body.push(bytesOf(object));
    body.text('\n');
    return at;
  });
  const head = `${numbers.join(' ')} `;
  const content = new Bytes();
  content.text(head);
  content.push(body.all());
  return stream(`/Type /ObjStm /N ${chunk.length} /First ${head.length}`, content.all());
}

function stream(keys: string, content: Uint8Array): Uint8Array {
  const deflated = zlibSync(content, { level: 6 });
  const out = new Bytes();
  out.text(`<< ${keys} /Filter /FlateDecode /Length ${deflated.length} >>\nstream\n`);
  out.push(deflated);
  out.text('\nendstream');
  return out.all();
}

/** Bytes of one row of the table: kind, then offset or stream, then index. */
const widths = [1, 4, 2] as const;
const rowLength = 7;

function writeTable(
  out: Bytes,
  { Root, Info, ID }: PDFDocument['context']['trailerInfo'],
  entries: Map<number, Entry>,
  number: number,
): void {
  const start = out.length;
  entries.set(number, { kind: 1, offset: start });
  const size = number + 1;
  const trailer = Object.entries({ Root, Info, ID }).flatMap(([key, value]) =>
    value === undefined ? [] : [`/${key} ${value.toString()}`],
  );
  const predicted = '/DecodeParms << /Predictor 12 /Columns 7 >>';
  const keys = `/Type /XRef /Size ${size} /W [ ${widths.join(' ')} ] ${predicted} ${trailer.join(' ')}`;
  writeObject(out, number, stream(keys, tableRows(entries, size)));
  out.text(`startxref\n${start}\n%%EOF`);
}

/** The rows, each as its difference from the one above it (PNG "up"), which compresses well. */
function tableRows(entries: ReadonlyMap<number, Entry>, size: number): Uint8Array {
  const rows = new DataView(new ArrayBuffer(size * rowLength));
  for (const [number, entry] of entries) {
    const at = number * rowLength;
    rows.setUint8(at, entry.kind);
    rows.setUint32(at + 1, entry.kind === 1 ? entry.offset : entry.stream);
    rows.setUint16(at + 5, entry.kind === 1 ? 0 : entry.index);
  }
  const plain = new Uint8Array(rows.buffer);
  const up = new Uint8Array(size * (rowLength + 1));
  for (let row = 0; row < size; row++) {
    up[row * (rowLength + 1)] = 2;
    for (let column = 0; column < rowLength; column++) {
      const at = row * rowLength + column;
      const above = row === 0 ? 0 : (plain[at - rowLength] ?? 0);
      up[row * (rowLength + 1) + 1 + column] = (plain[at] ?? 0) - above;
    }
  }
  return up;
}

/** Bytes that are put one behind another. */
class Bytes {
  #parts: Uint8Array[] = [];
  length = 0;

  push(part: Uint8Array): void {
    this.#parts.push(part);
    this.length += part.length;
  }

  text(text: string): void {
    this.push(/^[\x20-\x7e\n]*$/.test(text) ? ascii.encode(text) : Uint8Array.from(text, (sign) => sign.charCodeAt(0)));
  }

  all(): Uint8Array<ArrayBuffer> {
    const all = new Uint8Array(this.length);
    let at = 0;
    for (const part of this.#parts) {
      all.set(part, at);
      at += part.length;
    }
    return all;
  }
}
