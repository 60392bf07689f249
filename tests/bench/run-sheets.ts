import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { requireLibrary } from '../../src/library/load.ts';
import { sheetPapers, type SheetPaper } from '../../src/sheets/papers.ts';
import { sheetPdf } from '../../src/sheets/pdf.ts';
import { runSheet } from '../../src/sheets/sheet.ts';

const usage = `node tests/bench/run-sheets.ts [FORM …] [--out DIR]

Prints the processor time that each printed run sheet takes: planning it, and setting it in every size; then the memory
of the whole. Every form without a FORM; writes the PDFs to DIR where given. The first form also pays for starting the
typesetter.`;

const given = process.argv.slice(2);
const out = given.includes('--out') ? given[given.indexOf('--out') + 1] : undefined;
const wanted = given.filter((each) => !each.startsWith('--') && each !== out);
const papers = Object.keys(sheetPapers) as SheetPaper[];

/** Milliseconds of processor time, of all threads together. */
function busy<T>(work: () => T): [T, number] {
  const before = process.cpuUsage();
  const result = work();
  const { user, system } = process.cpuUsage(before);
  return [result, (user + system) / 1000];
}

function measure(form: string): void {
  const [sheet, planning] = busy(() => runSheet(library, form));
  let total = planning;
  const sizes = papers.map((paper) => {
    const [bytes, setting] = busy(() => sheetPdf(sheet, paper));
    total += setting;
    if (out !== undefined) writeFileSync(join(out, `${form}.${paper}.pdf`), bytes);
    return `${paper} ${setting.toFixed(0)} ms ${(bytes.length / 1024).toFixed(0)} KB`;
  });
  const steps = sheet.blocks.flatMap((block) => block.steps).length;
  console.log(`${form}: ${steps} steps, ${planning.toFixed(0)} ms, ${sizes.join(', ')}; in all ${total.toFixed(0)} ms`);
}

const library = requireLibrary('content');
if (given.includes('--help')) console.log(usage);
else {
  for (const form of wanted.length > 0 ? wanted : library.forms.map(({ id }) => id)) measure(form);
  console.log(`memory ${(process.resourceUsage().maxRSS / 1024).toFixed(0)} MB at most`);
}
