/** The different words of a text in small letters, in order of first appearance; an apostrophe is dropped, a hyphen parts. */
export function wordsOf(text: string): string[] {
  return [...new Set(text.toLowerCase().replaceAll(/['’]/g, '').match(/[\p{L}\p{N}]+/gu) ?? [])];
}
