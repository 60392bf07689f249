import { mkdir, writeFile } from 'node:fs/promises';
import { siteFonts, subset } from './site-fonts.ts';

const folder = 'src/styles/fonts';

/** Writes the subset fonts of the site and prints their sizes. */
async function writeFonts(): Promise<void> {
  await mkdir(folder, { recursive: true });
  for (const font of siteFonts) {
    const bytes = await subset(font);
    await writeFile(`${folder}/${font.file}`, bytes);
    console.log(`${folder}/${font.file}  ${bytes.length} bytes`);
  }
}

if (process.argv.includes('--help')) {
  console.log(
    `npm run fonts\n\nWrites the subset fonts of the site to ${folder}/ from the full fonts in node_modules.`,
  );
} else {
  await writeFonts();
}
