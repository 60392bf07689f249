import { mkdtempSync, readdirSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { keptFolder } from '../../../src/library/kept-folder.ts';

const text = (bytes: Uint8Array | undefined): string | undefined => bytes && new TextDecoder().decode(bytes);

/** A folder for what is kept, and a file that it is made with. */
function place(): { folder: string; maker: string } {
  const root = mkdtempSync(join(tmpdir(), 'kept-'));
  const maker = join(root, 'maker.txt');
  writeFileSync(maker, 'one');
  return { folder: join(root, 'results'), maker };
}

const onlyFolder = (folder: string): string => join(folder, readdirSync(folder)[0] ?? '');

describe('results kept from one run to the next', () => {
  it('are found by name until what made them changes', () => {
    const { folder, maker } = place();
    const first = keptFolder(folder, [maker]);
    expect(first.read('a')).toBeUndefined();
    first.write('a', 'made');
    expect(text(keptFolder(folder, [maker]).read('a'))).toBe('made');
    writeFileSync(maker, 'two');
    const later = keptFolder(folder, [maker]);
    expect(later.has('a')).toBe(false);
    expect(later.read('a')).toBeUndefined();
    expect(readdirSync(folder)).toEqual([]);
  });

  it('are dropped when nothing has asked for them in two weeks, and stay when something did', () => {
    const { folder, maker } = place();
    const kept = keptFolder(folder, [maker]);
    kept.write('asked', '1');
    kept.write('forgotten', '2');
    const old = new Date(Date.now() - 15 * 24 * 60 * 60 * 1000);
    for (const name of ['asked', 'forgotten']) utimesSync(join(onlyFolder(folder), name), old, old);
    kept.read('asked');
    const later = keptFolder(folder, [maker]);
    expect(later.has('asked')).toBe(true);
    expect(later.has('forgotten')).toBe(false);
  });

  it('leave nothing unfinished beside them', () => {
    const { folder, maker } = place();
    keptFolder(folder, [maker]).write('a', new Uint8Array([1, 2, 3]));
    expect(readdirSync(onlyFolder(folder))).toEqual(['a']);
  });
});
