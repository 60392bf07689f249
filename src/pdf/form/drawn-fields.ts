import {
  PDFArray,
  PDFDict,
  PDFHexString,
  PDFName,
  PDFRef,
  PDFString,
  type PDFDocument,
  type PDFPage,
} from '@cantoo/pdf-lib';
import { type FieldAddress, parseFieldAddress } from './field-address.ts';

/** The place of one field, or of one option, as the template drew it. */
export interface DrawnField extends FieldAddress {
  /** Page number from 1. */
  page: number;
  pageRef: PDFRef;
  /** The link annotation, which is to become the widget. */
  annotation: PDFDict;
  ref: PDFRef;
  /** In points. */
  width: number;
  /** In points. */
  height: number;
}

const addressOf = (annotation: PDFDict): FieldAddress | undefined => {
  const uri = annotation.lookupMaybe(PDFName.of('A'), PDFDict)?.get(PDFName.of('URI'));
  return uri instanceof PDFString || uri instanceof PDFHexString ? parseFieldAddress(uri.decodeText()) : undefined;
};

const drawnField = (page: PDFPage, number: number, ref: PDFRef): DrawnField[] => {
  const annotation = page.node.context.lookup(ref, PDFDict);
  const address = addressOf(annotation);
  if (!address) return [];
  const { width, height } = annotation.lookup(PDFName.of('Rect'), PDFArray).asRectangle();
  return [{ ...address, page: number, pageRef: page.ref, annotation, ref, width, height }];
};

const drawnOn = (page: PDFPage, number: number): DrawnField[] =>
  (page.node.Annots()?.asArray() ?? []).flatMap((ref) => (ref instanceof PDFRef ? drawnField(page, number, ref) : []));

/** Every field that the template drew, page by page in reading order. Other links are left alone. */
export const drawnFields = (document: PDFDocument): DrawnField[] =>
  document.getPages().flatMap((page, index) => drawnOn(page, index + 1));
