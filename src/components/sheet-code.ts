/** Remainders of ISO 3309, its polynomial reflected: what CRC-32 adds for each value of a byte. */
const remainders = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1;
  return rest;
});

/** CRC-32 of text as UTF-8, as eight hex digits (ISO 3309; ITU-T V.42). */
export function checkDigits(text: string): string {
  let rest = 0xffffffff;
  for (const byte of new TextEncoder().encode(text)) rest = (rest >>> 8) ^ (remainders[(rest ^ byte) & 255] ?? 0);
  return ((rest ^ 0xffffffff) >>> 0).toString(16).padStart(8, '0');
}

/**
 * The short code of a sheet that is printed from the browser: of its words alone, not of its addresses and anchors, so
 * that copies with one code say the same wherever they were made. `head` is plain text, `html` what follows it.
 */
export function sheetCode(head: readonly string[], html: string): string {
  const words = html.replaceAll(/<[^>]*>/g, ' ');
  return checkDigits([...head, words].join(' ').replaceAll(/\s+/g, ' ').trim());
}

/** What a printed sheet is. */
export interface SheetIdentity {
  /** Version of the library. */
  library: string;
  title: string;
  /** Stock examination that it is made from. */
  form: { id: string; version: string } | undefined;
  /** None while the sheet is not whole. */
  code: string | undefined;
}

/** What a sheet says at its foot: what it is, its version and code. */
export function sheetEdition({ library, title, form, code }: SheetIdentity): string {
  return [
    `Fingerbreadth ${library}`,
    `Run sheet: ${title}`,
    form !== undefined && `${form.id} ${form.version}`,
    code !== undefined && `code ${code}`,
  ]
    .filter((part) => part !== false)
    .join(' · ');
}
