import type { FormField } from '../../schemas/form.ts';
import { normalWords } from '../forms/normal-words.ts';
import { rangeText } from '../text/numbers.ts';

/** What stands in small below the words of a field: what is normal, and the range that a number is accepted in. */
export function fieldNotes(field: FormField): string[] {
  // The normal answer of a row of boxes is set bold instead.
  if (field.kind === 'scale' || field.kind === 'choice' || field.kind === 'text') return [];
  const normal = normalWords(field);
  return [
    ...(normal === undefined ? [] : [`Normal: ${normal}.`]),
    ...(field.kind === 'quantity' ? [`Accepts ${rangeText(field.min, field.max, field.unit)}.`] : []),
  ];
}

/** An answer as it is shown: of a grade the code alone, since its words stand once at the head of the section. */
export interface ShownOption {
  code: string;
  words: string;
  /** The rest of its words, for whoever hears them. */
  unseen: string;
  normal: boolean;
}

/** The answers that a scale or a choice offers. */
export function shownOptions(field: Extract<FormField, { options: unknown }>): ShownOption[] {
  return field.options.map(({ code, display, normal }) => {
    const words = field.kind === 'scale' ? code : display;
    return { code, words, unseen: display.slice(words.length), normal };
  });
}

/** An id for the page, made of a linkId; sections keep theirs to themselves. */
export const idOf = (linkId: string, part: 'ask' | 'side' | 'note' | 'unit' | 'fault' | 'blank'): string =>
  `${part}-${linkId}`;
