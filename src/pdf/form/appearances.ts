import { type PDFContext, type PDFDict, type PDFRef } from '@cantoo/pdf-lib';

/** Size of a field in points. */
export interface Size {
  width: number;
  height: number;
}

/** Appearance dictionaries for one document; fields of one size share their drawings. */
export interface Appearances {
  /** Of a text field with nothing in it: the page itself draws its line. */
  text: (size: Size) => PDFDict;
  /** Of a box that shows a cross while the answer `code` is chosen. */
  box: (size: Size, code: string) => PDFDict;
}

const rounded = (number: number): string => String(Math.round(number * 100) / 100);

/** A cross of two strokes, since a reader's own dingbat font is not embedded. */
function cross({ width, height }: Size): string {
  const arm = 0.34 * Math.min(width, height);
  const [left, right, low, high] = [width / 2 - arm, width / 2 + arm, height / 2 - arm, height / 2 + arm].map(rounded);
  return `q 1.4 w 1 J 0 G ${left} ${low} m ${right} ${high} l ${left} ${high} m ${right} ${low} l S Q`;
}

/** Marked content as readers expect to find and replace it. */
const noText = '/Tx BMC EMC';
const nothing = '';

/** Appearances that are registered in `context` as they are first needed. */
export function appearancesIn(context: PDFContext): Appearances {
  const registered = new Map<string, PDFRef>();
  const drawing = ({ width, height }: Size, operators: string): PDFRef => {
    const box = [0, 0, width, height].map(rounded).map(Number);
    const key = `${box.join(' ')} ${operators}`;
    const known = registered.get(key);
    if (known) return known;
    const ref = context.register(
      context.stream(operators, { Type: 'XObject', Subtype: 'Form', BBox: box, Resources: {} }),
    );
    registered.set(key, ref);
    return ref;
  };
  return {
    text: (size) => context.obj({ N: drawing(size, noText) }),
    box: (size, code) => context.obj({ N: { [code]: drawing(size, cross(size)), Off: drawing(size, nothing) } }),
  };
}
