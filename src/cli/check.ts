import { guardReleases } from '../forms/releases/guard.ts';
import { faultLine } from '../library/faults.ts';
import { loadLibrary } from '../library/load.ts';
import { readArguments } from './arguments.ts';

const help = `npm run check [-- DIR] [--json]

Checks a content folder (default "content") without building anything.
Prints one line per fault, path:line:column  message, and exits with 1;
prints a summary and exits with 0 when there is none. Warnings go to
standard error and do not fail the check.

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
  const [faults, warnings] = [
    [...ofContent, ...released.faults],
    [...ofReading, ...released.warnings],
  ];
  for (const warning of warnings) process.stderr.write(`warning  ${faultLine(warning)}\n`);
  if (options.has('json')) return print(JSON.stringify(faults, null, 1), faults.length > 0 ? 1 : 0);
  if (library === undefined || faults.length > 0) return print(faults.map(faultLine).join('\n'), 1);
  const count = library.protocols.reduce((sum, { manoeuvres }) => sum + manoeuvres.length, 0);
  return print(
    `No fault in ${root}: ${library.protocols.length} systems, ${count} manoeuvres, ${library.values.length} values, ${library.sources.length} sources.`,
    0,
  );
}

function print(text: string, code: number): number {
  process.stdout.write(`${text}\n`);
  return code;
}

process.exitCode = main();
