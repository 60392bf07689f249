/** Straight quotation marks and apostrophes as a typesetter sets them: “so”, ‘so’, it’s. */
export function curlyQuotes(text: string): string {
  return text
    .replace(/(^|[\s([{—–/-])"(?=\S)/g, '$1“')
    .replaceAll('"', '”')
    .replace(/(^|[\s([{—–/“-])'(?=\S)/g, '$1‘')
    .replaceAll("'", '’');
}
