import type { Source } from '../../schemas/source.ts';

/** How a source was read, in words. */
export const statusWords: Record<Source['status'], { label: string; meaning: string }> = {
  seen: { label: 'Seen', meaning: 'read in a stored copy at the place that is used' },
  abstract: { label: 'Abstract', meaning: 'only the abstract was read' },
  memory: { label: 'From memory', meaning: 'not seen, and to be checked before anyone relies on it' },
  none: { label: 'Common practice', meaning: 'a habit of the trade for which no published source was found' },
};
