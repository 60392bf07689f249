import { globSync } from 'node:fs';
import { readArguments } from './arguments.ts';
import { budget, editionBudget, overBudget, weighPage, type PageWeight } from './page-weight.ts';

const help = `npm run budgets [-- DIR]

Weighs every manoeuvre's page of a built site (default "dist"): HTML, CSS and
script compressed with gzip at level 9, fonts as they are. Prints one line for
each part over its budget and exits with 1. The base path is read from BASE_PATH.`;

/** Runs the check and returns the exit code. */
function main(): number {
  const { options, names, problem } = readArguments([], 1);
  if (options.has('help')) return print(help, 0);
  if (problem !== undefined) return print(problem, 1);
  const root = names[0] ?? 'dist';
  const most = process.env['CLINIC'] ? editionBudget : budget;
  const pages = globSync('protocols/*/*/index.html', { cwd: root }).sort();
  if (pages.length === 0) return print(`${root}  holds no manoeuvre's page; build the site first.`, 1);
  const weights = pages.map((page) => ({ page, weight: weighPage(root, process.env.BASE_PATH ?? '/', page) }));
  const faults = weights.flatMap(({ page, weight }) => overBudget(page, weight, most));
  if (faults.length > 0) return print(faults.join('\n'), 1);
  return print(
    `${pages.length} pages within budget; heaviest: ${heaviest(
      weights.map(({ weight }) => weight),
      most,
    )}.`,
    0,
  );
}

function heaviest(weights: PageWeight[], most: PageWeight): string {
  const parts = Object.keys(most) as (keyof PageWeight)[];
  return parts
    .map((part) => `${part} ${Math.max(...weights.map((weight) => weight[part]))} of ${most[part]}`)
    .join(', ');
}

function print(text: string, code: number): number {
  process.stdout.write(`${text}\n`);
  return code;
}

process.exitCode = main();
