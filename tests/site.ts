import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';

const folder = 'tests/.sites';
const inputs = ['content', 'schemas', 'src', 'public', 'astro.config.mjs', 'package-lock.json', 'package.json'];

/** The ways in which the site is built for tests: at the root and below a path. */
export const editions = { root: '/', sub: '/sub/' } as const;
export type Edition = keyof typeof editions;

/** Folder that holds the built site of an edition; the global set-up has built it. */
export function siteFolder(edition: Edition): string {
  return join(folder, `${inputHash()}-${edition}`);
}

/** Builds an edition unless the very same inputs were built before. Throws with the build's output when it fails. */
export function buildSite(edition: Edition, target = siteFolder(edition)): string {
  if (existsSync(target)) return target;
  mkdirSync(folder, { recursive: true });
  const partial = `${target}.partial`;
  rmSync(partial, { recursive: true, force: true });
  const started = performance.now();
  const run = spawnSync('npx', ['astro', 'build', '--outDir', partial], {
    encoding: 'utf8',
    env: { ...process.env, BASE_PATH: editions[edition], NODE_ENV: 'production', ASTRO_TELEMETRY_DISABLED: '1' },
  });
  if (run.status !== 0)
    throw new Error(`The site could not be built at ${editions[edition]}:\n${run.stdout}\n${run.stderr}`);
  renameSync(partial, target);
  process.stdout.write(
    `Built the site at ${editions[edition]} in ${((performance.now() - started) / 1000).toFixed(1)} s\n`,
  );
  return target;
}

/** Removes builds of other inputs, so that they do not pile up. */
export function removeStaleSites(): void {
  if (!existsSync(folder)) return;
  const current = inputHash();
  for (const name of readdirSync(folder)) {
    if (!name.startsWith(current)) rmSync(join(folder, name), { recursive: true, force: true });
  }
}

/** Every file below a folder, as paths inside it with forward slashes, sorted. */
export function filesBelow(root: string): string[] {
  return readdirSync(root, { recursive: true, encoding: 'utf8' })
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => statSync(join(root, path)).isFile())
    .sort();
}

let known: string | undefined;

function inputHash(): string {
  known ??= hashInputs();
  return known;
}

function hashInputs(): string {
  const hash = createHash('sha256');
  for (const input of inputs.filter((path) => existsSync(path))) {
    const files = statSync(input).isDirectory() ? filesBelow(input).map((path) => join(input, path)) : [input];
    for (const file of files) hash.update(file).update('\0').update(readFileSync(file)).update('\0');
  }
  return hash.digest('hex').slice(0, 12);
}
