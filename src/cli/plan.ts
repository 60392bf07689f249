import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { faultLine, type Fault } from '../library/faults.ts';
import { loadLibrary } from '../library/load.ts';
import { checkRequest } from '../plan/check-request.ts';
import { planRequest } from '../plan/plan.ts';
import { readJson } from './json-text.ts';

const help = `npm run plan -- REQUEST.json

Prints the run sheet of a request as JSON: the examination in the order that
moves the patient least. REQUEST.json is a file; - reads standard input.

  { "form": ID | "manoeuvres": [IDS] | "systems": [IDS],
    "minutes": 20,             time there is
    "start": POSITION,         where the patient is
    "cannot": [POSITIONS],     what the patient cannot take
    "without": [INSTRUMENTS],  what is missing
    "last": [MANOEUVRES],      what to leave for last
    "avoidSides": ["left"],    sides not to examine
    "pace": 1.5 }              multiplies the seconds of position changes

Only the first line is needed. What cannot be done is listed in "leftOut" with
the reason. Faults are printed one a line, path:line:column  message, and the
exit code is 1.

  --help   this text`;

/** Runs the planner and returns the exit code. */
function main(): number {
  const { name, wantsHelp, problem } = readArguments();
  if (wantsHelp) return print(help, 0);
  if (name === undefined) return print(problem, 1);
  const text = readText(name);
  if (typeof text !== 'string') return print(faultLine(text), 1);
  const { library, faults: contentFaults } = loadLibrary('content');
  if (library === undefined) return printFaults(contentFaults);
  const { value, faults, placeOf } = readJson(name, text);
  if (value === undefined) return printFaults(faults);
  const checked = checkRequest(library, value, placeOf);
  if (checked.request === undefined || faults.length > 0) return printFaults([...faults, ...checked.faults]);
  return print(JSON.stringify(planRequest(library, checked.request), null, 2), 0);
}

/** The one name given, or what is wrong with the arguments. */
function readArguments(): { name?: string; wantsHelp: boolean; problem: string } {
  try {
    const { values, positionals } = parseArgs({ allowPositionals: true, options: { help: { type: 'boolean' } } });
    const [name, ...more] = positionals;
    const problem = 'Name one request file, or - for standard input: npm run plan -- REQUEST.json (see --help).';
    return { ...(name !== undefined && more.length === 0 && { name }), wantsHelp: values.help ?? false, problem };
  } catch (error) {
    return { wantsHelp: false, problem: `${error instanceof Error ? error.message : String(error)} (see --help).` };
  }
}

function readText(name: string): string | Fault {
  try {
    return readFileSync(name === '-' ? 0 : name, 'utf8').replace(/^\uFEFF/, '');
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return { file: name, line: 1, column: 1, rule: 'file', message: `The request cannot be read: ${reason}.` };
  }
}

const printFaults = (faults: readonly Fault[]): number => print(faults.map(faultLine).join('\n'), 1);

function print(text: string, code: number): number {
  process.stdout.write(`${text}\n`);
  return code;
}

process.exitCode = main();
