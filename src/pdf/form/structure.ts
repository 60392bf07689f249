import { PDFArray, PDFDict, PDFName, PDFNumber, PDFRef, type PDFDocument } from '@cantoo/pdf-lib';
import { setEntries, words } from './widgets.ts';

/** Leaves of a number tree, ISO 32000-1, 7.9.7: number, then value. */
function* leaves(node: PDFDict): Generator<[number, PDFRef]> {
  const numbers = node.lookupMaybe(PDFName.of('Nums'), PDFArray)?.asArray() ?? [];
  for (let index = 0; index < numbers.length; index += 2) {
    const [key, value] = [numbers[index], numbers[index + 1]];
    if (key instanceof PDFNumber && value instanceof PDFRef) yield [key.asNumber(), value];
  }
  const kids = node.lookupMaybe(PDFName.of('Kids'), PDFArray)?.asArray() ?? [];
  for (const kid of kids) yield* leaves(node.context.lookup(kid, PDFDict));
}

/** Structure elements by the number that annotations give. Throws when the document is not tagged. */
export function structureParents(document: PDFDocument): Map<number, PDFDict> {
  const root = document.catalog.lookupMaybe(PDFName.of('StructTreeRoot'), PDFDict);
  const tree = root?.lookupMaybe(PDFName.of('ParentTree'), PDFDict);
  if (!tree) throw new Error('the document is not tagged; export it as PDF/UA-1 before fields are added');
  const elements = [...leaves(tree)].map(([key, ref]) => [key, document.context.lookup(ref)] as const);
  return new Map(elements.filter((entry): entry is [number, PDFDict] => entry[1] instanceof PDFDict));
}

/** Turns the structure element of a link annotation into a form element that says what its widget is for. */
export function tagAsForm(annotation: PDFDict, parents: ReadonlyMap<number, PDFDict>, alternative: string): void {
  const key = annotation.lookup(PDFName.of('StructParent'), PDFNumber).asNumber();
  const element = parents.get(key);
  if (!element) throw new Error(`annotation ${key} has no structure element; draw its field inside tagged content`);
  setEntries(element, element.context, { S: 'Form', Alt: words(alternative) });
}
