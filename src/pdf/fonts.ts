import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';

/** The faces that every PDF is set in, as package paths: full TrueType files, since subsets lack ≤ ≥ → −. */
export const faces = [
  '@expo-google-fonts/fira-sans/400Regular/FiraSans_400Regular.ttf',
  '@expo-google-fonts/fira-sans/400Regular_Italic/FiraSans_400Regular_Italic.ttf',
  '@expo-google-fonts/fira-sans/600SemiBold/FiraSans_600SemiBold.ttf',
  '@expo-google-fonts/fira-sans-condensed/400Regular/FiraSansCondensed_400Regular.ttf',
  '@expo-google-fonts/fira-sans-condensed/400Regular_Italic/FiraSansCondensed_400Regular_Italic.ttf',
  '@expo-google-fonts/fira-sans-condensed/600SemiBold/FiraSansCondensed_600SemiBold.ttf',
  '@expo-google-fonts/bitter/700Bold/Bitter_700Bold.ttf',
] as const;

/** Bytes of every face. Throws when a font package is not installed. Found from the working folder: bundlers move modules. */
export const fontBlobs = (): Buffer[] => {
  const require = createRequire(join(process.cwd(), 'package.json'));
  return faces.map((face) => readFileSync(require.resolve(face)));
};
