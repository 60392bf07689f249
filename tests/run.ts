import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { prepareMachine } from './machine.ts';

/** What a runner says of itself. */
interface Count {
  passed: number;
  failed: number;
}

interface Step {
  name: string;
  command: string[];
}

const checks: Step[] = [
  { name: 'content', command: ['node', 'src/cli/check.ts'] },
  // Lint and types need the declarations that Astro writes; a fresh clone has none.
  { name: 'declarations', command: ['astro', 'sync'] },
  { name: 'format', command: ['prettier', '--check', '--log-level', 'warn', '.'] },
  { name: 'lint', command: ['eslint', '-c', '.config/eslint.config.js', '--max-warnings', '0', '.'] },
  { name: 'types', command: ['astro', 'check', '--minimumFailingSeverity', 'hint'] },
  { name: 'types of client scripts', command: ['tsc', '-p', 'src/client/tsconfig.json', '--noEmit'] },
];

const help = `npm test

Checks the content, formatting, lint and types, then runs every test, a real
browser included. Looks for a Chromium, installs one as root on Debian, or says
how to get one. Ends with one line "N passed, N failed".

  --help   this text`;

/** Everything, with progress; returns the exit code. */
function main(): number {
  if (process.argv.includes('--help')) {
    process.stdout.write(`${help}\n`);
    return 0;
  }
  prepareMachine();
  const counts = [...checks.map(runCheck), runTests()];
  const passed = counts.reduce((sum, count) => sum + count.passed, 0);
  const failed = counts.reduce((sum, count) => sum + count.failed, 0);
  process.stdout.write(`\n${String(passed)} passed, ${String(failed)} failed\n`);
  return failed === 0 ? 0 : 1;
}

function runCheck({ name, command }: Step): Count {
  const started = performance.now();
  const [program = '', ...rest] = command;
  const run = spawnSync(program, rest, { encoding: 'utf8' });
  const good = run.status === 0;
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  process.stdout.write(`${good ? 'passed' : 'FAILED'}  ${name} (${seconds} s)\n`);
  if (!good) process.stdout.write(`${run.stdout}${run.stderr}${run.error ? String(run.error) : ''}\n`);
  return { passed: good ? 1 : 0, failed: good ? 0 : 1 };
}

function runTests(): Count {
  const report = join(mkdtempSync(join(tmpdir(), 'report-')), 'tests.json');
  const run = spawnSync(
    'vitest',
    [
      'run',
      '--config',
      'tests/vitest.config.ts',
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${report}`,
    ],
    { stdio: ['ignore', 'inherit', 'inherit'] },
  );
  return countOf(report, run.status === 0);
}

/** The runner's own sums; a run that failed without a failed test (a set-up that broke) counts as one failure. */
function countOf(report: string, good: boolean): Count {
  try {
    const { numPassedTests: passed, numFailedTests: failed } = JSON.parse(readFileSync(report, 'utf8')) as {
      numPassedTests: number;
      numFailedTests: number;
    };
    return { passed, failed: good || failed > 0 ? failed : 1 };
  } catch {
    return { passed: 0, failed: 1 };
  }
}

process.exitCode = main();
