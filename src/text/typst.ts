import type { Line } from '../../schemas/inline.ts';
import { referenceText } from './plain.ts';
import type { References } from './references.ts';

/** A run of text in one face, as the PDF templates take it. */
export interface TypstRun {
  text: string;
  bold?: true;
  italic?: true;
}

/** A line as runs for the PDF templates: data, never Typst code. */
export function typstRuns(line: Line, library: References, face: Omit<TypstRun, 'text'> = {}): TypstRun[] {
  return line.flatMap((part): TypstRun[] => {
    switch (part.type) {
      case 'text':
        return [{ text: part.text, ...face }];
      case 'strong':
        return typstRuns(part.children, library, { ...face, bold: true });
      case 'emphasis':
        return typstRuns(part.children, library, { ...face, italic: true });
      case 'link':
        return typstRuns(part.children, library, face);
      default:
        return [{ text: referenceText(part, library), ...face }];
    }
  });
}
