/** What was once made of a form is kept beside the project, so that building does not take longer with every release. */
import type { Form } from '../../../schemas/form.ts';
import { canonicalJson, sha256 } from '../../library/hash.ts';
import { keptFolder, type KeptFolder } from '../../library/kept-folder.ts';

const folder = '.cache/forms';

/** Everything that a form's files are made with, its data aside: the same makers and the same form give the same bytes. */
const makers = [
  'schemas/**/*.ts',
  'src/{forms,pdf,figures,text}/**/*.{ts,typ}',
  'src/pages/forms/_files.ts',
  'package-lock.json',
];

let opened: KeptFolder | undefined;
const keptFiles = (): KeptFolder => (opened ??= keptFolder(folder, makers));

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
  return `${keyOf(form)}${following}.${ending}`;
}

/** Whether a file of a form is kept. */
export const isKept = (form: Form, ending: string): boolean => keptFiles().has(nameOf(form, ending));

/** The kept file of a form, or what `make` gives, which is kept then. Rejects as `make` does. */
export async function kept(
  form: Form,
  ending: string,
  make: () => Promise<Uint8Array>,
  before?: Form,
): Promise<Uint8Array<ArrayBuffer>> {
  const name = nameOf(form, ending, before);
  const found = keptFiles().read(name);
  if (found !== undefined) return found;
  const bytes = new Uint8Array(await make());
  keptFiles().write(name, bytes);
  return bytes;
}
