import { readFile } from 'node:fs/promises';
import { text as textOf } from 'node:stream/consumers';
import type { Library } from '../../schemas/library.ts';
import type { Plan } from '../../schemas/plan.ts';
import { faultLine, type Fault } from '../library/faults.ts';
import { loadEdition } from '../forms/clinic/load.ts';
import { checkRequest } from '../plan/check-request.ts';
import { inPageOrder } from '../plan/manoeuvres-of.ts';
import { planRequest } from '../plan/plan.ts';
import { plainText } from '../text/plain.ts';
import { readArguments } from './arguments.ts';
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
the reason and with how it can be adapted, where the library says. Faults are
printed one a line, path:line:column  message, and the exit code is 1.

  --help   this text`;

/** Runs the planner and returns the exit code. */
async function main(): Promise<number> {
  const { options, names, problem } = readArguments([], 1);
  const [name] = names;
  if (options.has('help')) return print(help, 0);
  if (name === undefined || problem !== undefined)
    return print(problem ?? 'Name one request file, or - for standard input (see --help).', 1);
  const text = await readText(name);
  if (typeof text !== 'string') return print(faultLine(text), 1);
  const { edition, faults: contentFaults } = loadEdition('content', process.env['CLINIC']);
  if (edition === undefined) return printFaults(contentFaults);
  const { library } = edition;
  const { value, faults, placeOf } = readJson(name, text);
  if (value === undefined) return printFaults(faults);
  const checked = checkRequest(library, value, placeOf);
  if (checked.request === undefined || faults.length > 0) return printFaults([...faults, ...checked.faults]);
  const plan = planRequest(library, checked.request);
  return print(
    JSON.stringify({ ...plan, leftOut: plan.leftOut.map((one) => withAdaptations(library, one)) }, null, 2),
    0,
  );
}

/** What was left out, with how it can be adapted where the library says. */
function withAdaptations(library: Library, one: Plan['leftOut'][number]): Plan['leftOut'][number] {
  const manoeuvre = inPageOrder(library).find(({ id }) => id === one.manoeuvre);
  const adaptations = (manoeuvre?.adaptations ?? []).map((line) => plainText(line, library));
  return adaptations.length > 0 ? { ...one, adaptations } : one;
}

async function readText(name: string): Promise<string | Fault> {
  try {
    const text = await (name === '-' ? textOf(process.stdin) : readFile(name, 'utf8'));
    return text.replace(/^\uFEFF/, '');
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

process.exitCode = await main();
