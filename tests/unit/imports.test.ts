import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, it } from 'vitest';

/** Folders from the bottom up; a folder imports from lower rows only, never from its own row's neighbours. */
const rows = [
  ['schemas'],
  ['src/library'],
  ['src/plan', 'src/measure', 'src/evidence', 'src/figures', 'src/text', 'src/pdf'],
  ['src/cards', 'src/forms', 'src/search', 'src/sheets'],
  ['src/pages', 'src/layouts', 'src/components', 'src/client', 'src/cli'],
];

/** The top row is one level: pages use layouts and components, which use client scripts. */
const top = rows.length - 1;

interface Import {
  file: string;
  from: string;
  to: string;
}

function filesIn(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.(ts|astro)$/.test(path))
    .map((path) => join(folder, path));
}

function importsOf(file: string, from: string): Import[] {
  const specifiers = [...readFileSync(file, 'utf8').matchAll(/(?:from|import)\s*\(?\s*'([^']+)'/g)].map(
    (match) => match[1] ?? '',
  );
  return specifiers
    .filter((specifier) => specifier.startsWith('.'))
    .map((specifier) => normalize(join(dirname(file), specifier)))
    .flatMap((path) => {
      const to = rows.flat().find((folder) => path.startsWith(`${folder}/`));
      return to === undefined ? [] : [{ file, from, to }];
    });
}

const rowOf = (folder: string): number => rows.findIndex((row) => row.includes(folder));
const imports = rows.flat().flatMap((folder) => filesIn(folder).flatMap((file) => importsOf(file, folder)));

function isAllowed({ from, to }: Import): boolean {
  if (from === to || rowOf(to) < rowOf(from)) return true;
  return rowOf(from) === top && rowOf(to) === top;
}

describe('imports between folders', () => {
  it('are found', () => {
    expect(imports.filter(({ from }) => from === 'src/library').length).toBeGreaterThan(20);
  });

  it('go down the list only', () => {
    expect(imports.filter((one) => !isAllowed(one))).toEqual([]);
  });

  it('keep astro: modules out of everything below pages', () => {
    const below = rows.slice(0, top).flat().flatMap(filesIn);
    expect(below.filter((file) => /from\s+'astro(:|\/|')/.test(readFileSync(file, 'utf8')))).toEqual([]);
  });
});
