import { readFile } from 'node:fs/promises';
import subsetFont from 'subset-font';

/** A font of the site: where its full file stands, which characters the site needs of it, and which features. */
export interface SiteFont {
  /** File name under src/styles/fonts/. */
  file: string;
  /** Full font, from the project's root. */
  from: string;
  /** Every character that the subset holds. */
  characters: string;
  /** OpenType features that stay: kerning, and figures of one width for tables. */
  features: string[];
}

const printableAscii = Array.from({ length: 95 }, (_, i) => String.fromCharCode(32 + i)).join('');
const without = (text: string, unwanted: string) =>
  Array.from(text)
    .filter((c) => !unwanted.includes(c))
    .join('');

const accented = 'éèêëáäåçïóöøü';
const names = 'ÁÅÆÇÉÖØÜİãâæíîñòôõøùûýßčćęěğıłńřśşšůźžŁŞŠŽ';
const text = `${printableAscii}\u00a0–—‘’“”…·×÷±≤≥°µ½¼¾²³₂−→←↑↓§©${accented}${names}`;
const strong = `${without(printableAscii, '{}|~^\\`$@#*<>')}\u00a0–—‘’“”…·×≤≥°−→←${accented}`;
const heading = `${without(printableAscii, '{}|~^\\`$@#*<>_[]"%=+')}\u00a0–—‘’${accented}`;

const packages = 'node_modules/@expo-google-fonts';

/** The three fonts of the site. Characters outside a subset fall to the reader's own sans or serif. */
export const siteFonts: SiteFont[] = [
  {
    file: 'fira-sans-400.woff2',
    from: `${packages}/fira-sans/400Regular/FiraSans_400Regular.ttf`,
    characters: text,
    features: ['kern', 'tnum'],
  },
  {
    file: 'fira-sans-600.woff2',
    from: `${packages}/fira-sans/600SemiBold/FiraSans_600SemiBold.ttf`,
    characters: strong,
    features: ['kern', 'tnum'],
  },
  {
    file: 'bitter-700.woff2',
    from: `${packages}/bitter/700Bold/Bitter_700Bold.ttf`,
    characters: heading,
    features: ['kern'],
  },
];

/** Returns `font` cut down to its characters, as WOFF2; the same bytes each time. Rejects if the full font is missing. */
export async function subset(font: SiteFont): Promise<Buffer> {
  const full = await readFile(font.from);
  return subsetFont(full, font.characters, { targetFormat: 'woff2', noHinting: true, keepFeatures: font.features });
}
