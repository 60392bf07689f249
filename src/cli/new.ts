import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { id as idSchema } from '../../schemas/common.ts';
import { didYouMean } from '../library/suggest.ts';
import { readArguments } from './arguments.ts';
import { startingFiles } from './starting-files.ts';

const help = `npm run new -- KIND ID

Writes a commented starting file into content/ and prints its path.
It never overwrites a file.

  protocol ID   content/protocols/ID.mdx: a system with one manoeuvre
  form ID       content/forms/ID.yaml: an examination
  clinic ID     content/clinics/ID/clinic.yaml: a clinic's edition

  --help        this text`;

/** Writes the file; returns the exit code. */
function main(): number {
  const { options, names, problem } = readArguments([], 2);
  if (options.has('help')) return say(help, 0);
  if (problem !== undefined) return say(problem, 1);
  const [kind = '', id = ''] = names;
  const make = Object.hasOwn(startingFiles, kind) ? startingFiles[kind] : undefined;
  const kinds = Object.keys(startingFiles);
  if (make === undefined)
    return say(`"${kind}" is not a kind of file.${didYouMean(kind, kinds)} Kinds: ${kinds.join(', ')}.`, 1);
  if (!idSchema.safeParse(id).success)
    return say(`"${id}" is not an id. Use lower-case letters, digits and single hyphens.`, 1);
  const { path, text } = make(id);
  if (existsSync(path)) return say(`${path}:1:1  The file exists already; it is left as it is.`, 1);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
  return say(path, 0);
}

function say(text: string, code: number): number {
  (code === 0 ? process.stdout : process.stderr).write(`${text}\n`);
  return code;
}

process.exitCode = main();
