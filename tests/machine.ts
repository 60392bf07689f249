import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { findChromium } from './chromium.ts';

/** What this machine must have beside npm packages: a browser, and two programs that judge PDFs. */
const needs: { name: string; present: () => boolean }[] = [
  { name: 'Chromium', present: () => findChromium() !== undefined },
  { name: 'qpdf', present: () => runs('qpdf') },
  { name: 'pdfinfo (poppler-utils)', present: () => runs('pdfinfo') },
];

/**
 * Makes sure that the machine has what the tests need: installs Debian's packages when this is
 * root on Debian, else throws one line that says what is missing and how to get it.
 */
export function prepareMachine(): void {
  if (missing().length > 0 && process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) install();
  const still = missing();
  if (still.length === 0) return;
  throw new Error(
    `Missing: ${still.join(', ')}. On Debian: sudo apt-get install ${packages().join(' ')}. Elsewhere install them and set CHROMIUM to the browser's path.`,
  );
}

function missing(): string[] {
  return needs.filter(({ present }) => !present()).map(({ name }) => name);
}

function install(): void {
  process.stdout.write(`Missing: ${missing().join(', ')}. Installing ${packages().join(', ')} with apt-get.\n`);
  spawnSync('apt-get', ['update', '-qq'], { stdio: 'inherit' });
  spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...packages()], {
    stdio: ['ignore', 'ignore', 'inherit'],
  });
}

/** The one list of Debian packages, which .ci/run reads too. */
function packages(): string[] {
  return readFileSync('.ci/debian-packages', 'utf8')
    .split('\n')
    .filter((line) => line !== '');
}

function runs(program: string): boolean {
  return spawnSync(program, ['--version']).error === undefined;
}
