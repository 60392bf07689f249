import { createHash } from 'node:crypto';
import {
  existsSync,
  globSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';

/** What was worked out once, by name; a name says all that the content depends on, the makers aside. */
export interface KeptFolder {
  read: (name: string) => Uint8Array<ArrayBuffer> | undefined;
  has: (name: string) => boolean;
  write: (name: string, content: string | Uint8Array) => void;
}

/** Days after which what no run has asked for is dropped. */
const daysUnused = 14;
const day = 24 * 60 * 60 * 1000;

/**
 * Opens a folder of results. Results of other makers, and those that nobody has asked for in two weeks, are deleted.
 * @param folder path from the project's folder
 * @param makers glob patterns of the files that results are made with: when one changes, nothing kept is used again
 */
export function keptFolder(folder: string, makers: readonly string[]): KeptFolder {
  const current = hashOfFiles(makers);
  const path = join(folder, current);
  prune(folder, current);
  return {
    has: (name) => existsSync(join(path, name)),
    read: (name) => readUsed(join(path, name)),
    write: (name, content) => {
      mkdirSync(path, { recursive: true });
      // Put in place whole: another run may be reading.
      const unfinished = join(path, `${name}.${process.pid}`);
      writeFileSync(unfinished, content);
      renameSync(unfinished, join(path, name));
    },
  };
}

function hashOfFiles(patterns: readonly string[]): string {
  const hash = createHash('sha256');
  for (const file of patterns.flatMap((pattern) => globSync(pattern)).sort())
    hash.update(file).update('\0').update(readFileSync(file));
  return hash.digest('hex').slice(0, 16);
}

function readUsed(file: string): Uint8Array<ArrayBuffer> | undefined {
  if (!existsSync(file)) return undefined;
  const now = new Date();
  utimesSync(file, now, now);
  return new Uint8Array(readFileSync(file));
}

function prune(folder: string, current: string): void {
  if (!existsSync(folder)) return;
  for (const old of readdirSync(folder))
    if (old !== current) rmSync(join(folder, old), { recursive: true, force: true });
  const path = join(folder, current);
  if (!existsSync(path)) return;
  const oldest = Date.now() - daysUnused * day;
  for (const name of readdirSync(path))
    if ((statSync(join(path, name), { throwIfNoEntry: false })?.mtimeMs ?? oldest) < oldest)
      rmSync(join(path, name), { force: true });
}
