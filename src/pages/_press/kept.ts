/** What was once made of a form is kept beside the project, so that building does not take longer with every release. */
import { createHash } from 'node:crypto';
import { existsSync, globSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Form } from '../../../schemas/form.ts';
import { canonicalJson, sha256 } from '../../library/hash.ts';

const folder = '.cache/forms';

/** Everything that a form's files are made with, its data aside: the same makers and the same form give the same bytes. */
const makers = [
  'schemas/**/*.ts',
  'src/{forms,pdf,figures,text}/**/*.{ts,typ}',
  'src/pages/forms/_files.ts',
  'package-lock.json',
];

let known: string | undefined;
const makersHash = (): string => (known ??= hashOfMakers());

function hashOfMakers(): string {
  const hash = createHash('sha256');
  for (const file of makers.flatMap((pattern) => globSync(pattern)).sort())
    hash.update(file).update('\0').update(readFileSync(file));
  const current = hash.digest('hex').slice(0, 16);
  if (existsSync(folder))
    for (const old of readdirSync(folder)) if (old !== current) rmSync(join(folder, old), { recursive: true });
  return current;
}

const keys = new WeakMap<Form, string>();

/** SHA-256 of all of a form: its state, dates and sign-off are printed too. */
function keyOf(form: Form): string {
  const key = keys.get(form) ?? sha256(canonicalJson(form));
  keys.set(form, key);
  return key;
}

/** Name of one kept file: of a form, and of the release before it where the file tells what changed. */
function nameOf(form: Form, ending: string, before?: Form): string {
  const following = before === undefined ? '' : `-${keyOf(before).slice(0, 16)}`;
  return join(folder, makersHash(), `${keyOf(form)}${following}.${ending}`);
}

/** Whether a file of a form is kept. */
export const isKept = (form: Form, ending: string): boolean => existsSync(nameOf(form, ending));

/** The kept file of a form, or what `make` gives, which is kept then. Rejects as `make` does. */
export async function kept(
  form: Form,
  ending: string,
  make: () => Promise<Uint8Array>,
  before?: Form,
): Promise<Uint8Array<ArrayBuffer>> {
  const name = nameOf(form, ending, before);
  if (existsSync(name)) return new Uint8Array(readFileSync(name));
  const bytes = new Uint8Array(await make());
  mkdirSync(join(folder, makersHash()), { recursive: true });
  // Put in place whole: another build may be reading.
  writeFileSync(`${name}.${process.pid}`, bytes);
  renameSync(`${name}.${process.pid}`, name);
  return bytes;
}
