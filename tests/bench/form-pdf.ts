import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { buildForm } from '../../src/forms/form.ts';
import { sheetOf } from '../../src/forms/paper/sheet.ts';
import { formPdf } from '../../src/forms/pdf.ts';
import { requireLibrary } from '../../src/library/load.ts';
import { compilePdf } from '../../src/pdf/engine.ts';

const usage = `node tests/bench/form-pdf.ts [FORM …] [--out DIR]

Prints how long each form takes as PDF, on A4 and Letter: setting alone, and whole. Every form without a FORM; writes the PDFs to DIR where given.`;

const given = process.argv.slice(2);
const out = given.includes('--out') ? given[given.indexOf('--out') + 1] : undefined;
const wanted = given.filter((each) => !each.startsWith('--') && each !== out);

async function timed<T>(work: () => T | Promise<T>): Promise<[T, number]> {
  const start = performance.now();
  return [await work(), performance.now() - start];
}

async function measure(formId: string): Promise<void> {
  const form = buildForm(library, formId);
  for (const paper of ['a4', 'letter'] as const) {
    const [, setting] = await timed(() => compilePdf({ template: 'form.typ', data: sheetOf(form, paper, library) }));
    const [bytes, whole] = await timed(() => formPdf(form, paper, library));
    const fields = form.sections.flatMap(({ items }) => items.flatMap((item) => item.fields)).length;
    console.log(
      `${formId}.${paper}.pdf: ${fields} fields, set in ${setting.toFixed(0)} ms, again with its fields made ${whole.toFixed(0)} ms, ${(bytes.length / 1024).toFixed(0)} KB`,
    );
    if (out !== undefined) writeFileSync(join(out, `${formId}.${paper}.pdf`), bytes);
  }
}

const library = requireLibrary('content');
if (given.includes('--help')) console.log(usage);
else for (const id of wanted.length > 0 ? wanted : library.forms.map((form) => form.id)) await measure(id);
