import { Paragraph } from 'docx';
import { flagList, style } from './look.ts';
import { boldRun, run } from './runs.ts';

/** A paragraph that begins with bold words. */
export function led(lead: string, words: string, of: (typeof style)[keyof typeof style] = style.safety): Paragraph {
  return new Paragraph({ style: of, children: [boldRun(`${lead} `), run(words)] });
}

/** A line of a list of red flags. */
export const flagLine = (words: string): Paragraph =>
  new Paragraph({ style: style.note, numbering: { reference: flagList, level: 0 }, text: words });
