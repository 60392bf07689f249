import { parseArgs } from 'node:util';
import { formCheckResponse, formNoteOf } from './form-check-response.ts';
import { formDiff } from './form-diff.ts';
import type { Outcome } from './form-note.ts';
import { formRelease } from './form-release.ts';

const help = `npm run form -- COMMAND …

  release FORM               freezes the draft of a form as a release that never
                             changes; refuses one that is not signed off, one
                             whose version is too small for what changed
  diff A B [--json]          what changed from A to B, and how large it is
  check-response FORM FILE   every fault of a filled form (a FHIR R4
                             QuestionnaireResponse) against its form
  note FORM FILE             the note of a filled form as plain text

A, B and FORM are FORM@VERSION, for example adult-screening@1.0.0, or
FORM@next for the draft. Without a version: the release in use; for B the draft;
for check-response and note the version that the file names. A FILE of - is
standard input. With CLINIC=NAME all of it is about the forms as that clinic has
them. Faults are printed one a line, path:line:column  message, and the exit
code is 1.

  --help   this text`;

interface Command {
  /** How many names it takes. */
  takes: 1 | 2;
  run: (a: string, b: string, asJson: boolean) => Outcome | Promise<Outcome>;
}

const commands: Readonly<Record<string, Command>> = {
  release: { takes: 1, run: (form) => formRelease('content', form) },
  diff: { takes: 2, run: (a, b, asJson) => formDiff('content', a, b, asJson) },
  'check-response': { takes: 2, run: (form, file) => formCheckResponse('content', form, file) },
  note: { takes: 2, run: (form, file) => formNoteOf('content', form, file) },
};

/** Runs the command and returns the exit code. */
async function main(): Promise<number> {
  const { text, code } = await run(process.argv.slice(2));
  process.stdout.write(`${text}\n`);
  return code;
}

async function run(given: string[]): Promise<Outcome> {
  const { values, positionals, problem } = argumentsOf(given);
  if (problem !== undefined) return { text: problem, code: 1 };
  if (values.help === true) return { text: help, code: 0 };
  const [name = '', ...names] = positionals;
  const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (command === undefined) return refused(name === '' ? 'Name a command' : `"${name}" is not a command`);
  if (names.length !== command.takes) return refused(`"${name}" takes ${command.takes} names`);
  if (values.json === true && name !== 'diff') return refused('--json goes with diff alone');
  const [a = '', b = ''] = names;
  return command.run(a, b, values.json === true);
}

const refused = (reason: string): Outcome => ({ text: `${reason} (see --help).`, code: 1 });

interface Given {
  values: { help?: boolean | undefined; json?: boolean | undefined };
  positionals: string[];
  problem?: string;
}

function argumentsOf(given: string[]): Given {
  try {
    const options = { help: { type: 'boolean' }, json: { type: 'boolean' } } as const;
    return parseArgs({ args: given, allowPositionals: true, options });
  } catch (error) {
    const [reason] = (error instanceof Error ? error.message : String(error)).split('. ');
    return { values: {}, positionals: [], problem: `${String(reason)} (see --help).` };
  }
}

process.exitCode = await main();
