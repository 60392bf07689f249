import { spawnSync } from 'node:child_process';
import { settingFaults } from './settings.ts';

const steps = [
  ['node', 'src/cli/check.ts'],
  ['astro', 'build'],
  ['node', 'src/cli/budgets.ts'],
];

/** Checks the content, builds the site into dist/ and weighs its pages, with the output of each; returns the exit code. */
export function buildSite(): number {
  const faults = settingFaults(process.env);
  if (faults.length > 0) process.stdout.write(`${faults.join('\n')}\n`);
  return faults.length > 0 || !steps.every((step) => run(step) === 0) ? 1 : 0;
}

function run([program = '', ...more]: readonly string[]): number {
  return spawnSync(program, more, { stdio: 'inherit' }).status ?? 1;
}
