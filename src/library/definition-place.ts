import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { At } from './faults.ts';

/** Where the definition of a form writes a key; the start of its file, or of the folder, when it is not written. */
export function definitionPlace(root: string, form: string, key: string): At {
  const shown = `${root.replaceAll('\\', '/').replace(/\/+$/, '')}/forms`;
  const found = readdirSync(join(root, 'forms'))
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => ({ name, text: readFileSync(join(root, 'forms', name), 'utf8') }))
    .find(({ text }) => new RegExp(`^id: *["']?${form}["']?\\s*$`, 'm').test(text));
  if (found === undefined) return { file: shown, line: 1, column: 1 };
  const before = new RegExp(`^${key}:`, 'm').exec(found.text)?.index ?? 0;
  return { file: `${shown}/${found.name}`, line: found.text.slice(0, before).split('\n').length, column: 1 };
}
