import type { Line } from '../../schemas/inline.ts';

/** The words of a line for counting and matching; a reference counts as one number. Outputs render lines properly elsewhere. */
export function roughText(line: Line): string {
  return line
    .map((part): string => (part.type === 'text' ? part.text : 'children' in part ? roughText(part.children) : '0'))
    .join('');
}
