import type { Form } from '../../schemas/form.ts';
import { formBundle } from '../../src/forms/bundle/bundle.ts';
import { codebook } from '../../src/forms/codebook.ts';
import { formDocx } from '../../src/forms/docx/docx.ts';
import { formPdf } from '../../src/forms/pdf.ts';
import { formText } from '../../src/forms/plain/text.ts';
import { questionnaire } from '../../src/forms/questionnaire.ts';
import { loadReleases } from '../../src/forms/releases/load.ts';
import { responseSchema } from '../../src/forms/response-schema.ts';
import { sha256 } from '../../src/library/hash.ts';

const usage = `node --expose-gc tests/bench/releases.ts

Prints how long every release takes in every format, made from nothing: seconds of processor time and of the clock, by
format. A build makes them once and keeps them in .cache/forms/ for as long as neither the form nor what sets it changes.`;

type Bytes = Uint8Array | string;

/** Every format but the archive of all, as the site writes it. */
const formats: Record<string, (form: Form) => Bytes | Promise<Bytes>> = {
  'a4.pdf': (form) => formPdf(form, 'a4'),
  'letter.pdf': (form) => formPdf(form, 'letter'),
  'large.pdf': (form) => formPdf(form, 'large'),
  'questionnaire.json': (form) => JSON.stringify(questionnaire(form), undefined, 2),
  'schema.json': (form) => JSON.stringify(responseSchema(form), undefined, 2),
  'codebook.csv': codebook,
  docx: formDocx,
  txt: formText,
};

const processor = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
};

interface Spent {
  processor: number;
  clock: number;
}
const spent = new Map<string, Spent>();

async function timed<T>(name: string, work: () => T | Promise<T>): Promise<T> {
  const [cpu, clock] = [processor(), performance.now()];
  const result = await work();
  const before = spent.get(name) ?? { processor: 0, clock: 0 };
  const seconds = (performance.now() - clock) / 1000;
  spent.set(name, { processor: before.processor + processor() - cpu, clock: before.clock + seconds });
  return result;
}

async function write(form: Form): Promise<void> {
  const files: { name: string; mediaType: string; use: string; bytes: Uint8Array }[] = [];
  for (const [ending, make] of Object.entries(formats)) {
    const made = await timed(ending, () => make(form));
    const bytes = typeof made === 'string' ? new TextEncoder().encode(made) : new Uint8Array(made);
    files.push({ name: `${form.id}.${ending}`, mediaType: 'x', use: 'x', bytes });
  }
  // A typeset document is large behind a small handle: see src/pages/_press/worker.ts.
  globalThis.gc?.();
  await timed('zip', () => formBundle({ form, files, sha256: (bytes) => sha256(String(bytes.length)) }));
}

async function main(): Promise<void> {
  const { releases } = await timed('reading and checking the frozen files', () => loadReleases('content'));
  for (const { form } of releases) await write(form);
  const all = [...spent.entries(), ['all', sum()] as const];
  for (const [name, one] of all)
    console.log(`${name.padEnd(40)} ${one.processor.toFixed(1)} s of processor, ${one.clock.toFixed(1)} s`);
  console.log(`${releases.length} releases`);
}

function sum(): Spent {
  return [...spent.values()].reduce((total, one) => ({
    processor: total.processor + one.processor,
    clock: total.clock + one.clock,
  }));
}

if (process.argv.includes('--help')) console.log(usage);
else await main();
