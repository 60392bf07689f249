import type { Inline, Line } from '../../schemas/inline.ts';
import { evidenceText } from './evidence-text.ts';
import { byId, type References } from './references.ts';
import { valueText } from './value-text.ts';

/** A line as plain text, references written out. */
export function plainText(line: Line, library: References): string {
  return line.map((part) => plainPart(part, library)).join('');
}

function plainPart(part: Inline, library: References): string {
  switch (part.type) {
    case 'text':
      return part.text;
    case 'strong':
    case 'emphasis':
    case 'link':
      return plainText(part.children, library);
    default:
      return referenceText(part, library);
  }
}

/** The words that stand for a reference in any output. */
export function referenceText(
  { type, id }: { type: 'value' | 'scale' | 'evidence' | 'measure'; id: string },
  library: References,
): string {
  switch (type) {
    case 'value':
      return valueText(byId(library.values, id));
    case 'scale':
      return byId(library.scales, id).title;
    case 'evidence':
      return evidenceText(byId(library.evidence, id), library.evidence);
    case 'measure':
      return byId(library.tools, id).title;
  }
}
