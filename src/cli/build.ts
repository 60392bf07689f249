import { readArguments } from './arguments.ts';
import { buildSite } from './build-site.ts';

const help = `npm run build

Checks the content, builds the whole site into dist/ and weighs its pages.
Stops at the first of the three that fails and exits with 1.

  BASE_PATH=/x/     for a site below a path
  SITE_URL=ADDRESS  for canonical links of pages, for example https://example.org
  CLINIC=NAME       as the edition of a clinic of content/clinics/
  --help            this text`;

/** Builds, and returns the exit code. */
function main(): number {
  const { options, problem } = readArguments([], 0);
  if (!options.has('help') && problem === undefined) return buildSite();
  process.stdout.write(`${options.has('help') ? help : String(problem)}\n`);
  return options.has('help') ? 0 : 1;
}

process.exitCode = main();
