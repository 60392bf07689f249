import type { Library } from '../../schemas/library.ts';
import { guardClinics } from '../forms/clinic/guard.ts';
import { guardReleases } from '../forms/releases/guard.ts';
import { clinicFault } from '../library/clinic/choose.ts';
import { faultLine, type Fault } from '../library/faults.ts';
import { loadLibrary } from '../library/load.ts';
import { readArguments } from './arguments.ts';

const help = `npm run check [-- DIR] [--json]

Checks a content folder (default "content") without building anything.
Prints one line per fault, path:line:column  message, and exits with 1;
prints a summary and exits with 0 when there is none. Warnings go to
standard error and do not fail the check. Every clinic's edition is checked;
CLINIC=NAME also says whether there is one of that name.

  --json   prints the faults as [{file,line,column,rule,message}]
  --help   this text`;

/** Runs the check and returns the exit code. */
function main(): number {
  const { options, names, problem } = readArguments(['json'], 1);
  if (options.has('help')) return print(help, 0);
  if (problem !== undefined) return print(problem, 1);
  const root = names[0] ?? 'content';
  const today = new Date().toISOString().slice(0, 10);
  const { library, faults: ofContent, warnings: ofReading } = loadLibrary(root, { today, keepTrees: true });
  const released = guardReleases(root, library, today);
  const clinics = library === undefined ? { faults: [], warnings: [] } : guardClinics(root, library, today);
  const [faults, warnings] = [
    [...ofContent, ...released.faults, ...clinics.faults, ...unknownClinic(root, library)],
    [...ofReading, ...released.warnings, ...clinics.warnings],
  ];
  for (const warning of warnings) process.stderr.write(`warning  ${faultLine(warning)}\n`);
  if (options.has('json')) return print(JSON.stringify(faults, null, 1), faults.length > 0 ? 1 : 0);
  if (library === undefined || faults.length > 0) return print(faults.map(faultLine).join('\n'), 1);
  const count = library.protocols.reduce((sum, { manoeuvres }) => sum + manoeuvres.length, 0);
  return print(
    `No fault in ${root}: ${library.protocols.length} systems, ${count} manoeuvres, ${library.values.length} values, ${library.sources.length} sources.${editionNote(library)}`,
    0,
  );
}

function editionNote({ clinics }: Library): string {
  const clinic = clinics.find(({ id }) => id === process.env['CLINIC']);
  return clinic === undefined ? '' : ` The edition of ${clinic.name} fits.`;
}

function unknownClinic(root: string, library: Library | undefined): Fault[] {
  if (library === undefined) return [];
  const ids = library.clinics.map(({ id }) => id);
  const message = clinicFault(ids, process.env['CLINIC']);
  return message === undefined ? [] : [{ file: `${root}/clinics`, line: 1, column: 1, rule: 'clinic', message }];
}

function print(text: string, code: number): number {
  process.stdout.write(`${text}\n`);
  return code;
}

process.exitCode = main();
