import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Form } from '../../schemas/form.ts';
import { buildForm } from '../../src/forms/form.ts';
import { formFieldSpecs } from '../../src/forms/paper/form-fields.ts';
import { sheetFields } from '../../src/forms/paper/sheet-fields.ts';
import { type Print, prints, sheetOf } from '../../src/forms/paper/sheet.ts';
import { requireLibrary } from '../../src/library/load.ts';
import { compilePdf } from '../../src/pdf/engine.ts';
import { addFormFields } from '../../src/pdf/form-pass.ts';

const usage = `node tests/bench/form-pdf.ts [FORM …] [--out DIR]

Prints how long each form takes as PDF, on A4, on Letter and in large print: setting it, and making its fields. Every form without a FORM;
writes the PDFs to DIR where given. The first form also pays for starting the typesetter.`;

const given = process.argv.slice(2);
const out = given.includes('--out') ? given[given.indexOf('--out') + 1] : undefined;
const wanted = given.filter((each) => !each.startsWith('--') && each !== out);

async function timed<T>(work: () => T | Promise<T>): Promise<[T, number]> {
  const start = performance.now();
  return [await work(), performance.now() - start];
}

async function measure(form: Form, paper: Print): Promise<number> {
  const template = paper === 'large' ? 'form-large.typ' : 'form.typ';
  const [blank, setting] = await timed(() => compilePdf({ template, data: sheetOf(form, paper) }));
  const [bytes, making] = await timed(() => addFormFields(blank, [...sheetFields, ...formFieldSpecs(form)]));
  const items = form.sections.flatMap((section) => section.items).filter(({ fields }) => fields.length > 0);
  const fields = items.flatMap((item) => item.fields).length;
  const name = `${form.id}.${paper}.pdf`;
  console.log(
    `${name}: ${items.length} items, ${fields} fields, set in ${setting.toFixed(0)} ms, fields made in ${making.toFixed(0)} ms, ${(bytes.length / 1024).toFixed(0)} KB`,
  );
  if (out !== undefined) writeFileSync(join(out, name), bytes);
  return setting + making;
}

async function measureAll(ids: readonly string[]): Promise<void> {
  let total = 0;
  for (const form of ids.map((id) => buildForm(library, id)))
    for (const paper of prints) total += await measure(form, paper);
  console.log(`${prints.length * ids.length} files in ${(total / 1000).toFixed(1)} s`);
}

const library = requireLibrary('content');
if (given.includes('--help')) console.log(usage);
else await measureAll(wanted.length > 0 ? wanted : library.forms.map(({ id }) => id));
