/** The same content gives the same site: from one build to the next, and at the root and below a path. */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { sha256 } from '../../src/library/hash.ts';
import { buildSite, editions, filesBelow, siteFolder } from '../site.ts';
import { builtPages } from './kinds.ts';

describe('a second build', () => {
  it('in another time zone and language has the same files with the same bytes', { timeout: 600_000 }, () => {
    vi.stubEnv('TZ', 'Pacific/Kiritimati');
    vi.stubEnv('LANG', 'tr_TR.UTF-8');
    vi.stubEnv('LC_ALL', 'tr_TR.UTF-8');
    const [first, second] = [siteFolder('root'), buildSite('root', `${siteFolder('root')}-again`)];
    vi.unstubAllEnvs();
    expect(filesBelow(second)).toEqual(filesBelow(first));
    const differing = filesBelow(first).filter(
      (file) => !readFileSync(join(first, file)).equals(readFileSync(join(second, file))),
    );
    expect(differing).toEqual([]);
  });
});

describe('files that are kept from one build to the next', () => {
  it('have the same bytes when they are set anew, in another time zone and language', () => {
    const env = { ...process.env, TZ: 'Pacific/Kiritimati', LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8' };
    const run = spawnSync('node', ['tests/fixtures/set-anew.ts'], { encoding: 'utf8', env });
    const sums = JSON.parse(run.stdout) as Record<string, string>;
    expect(Object.keys(sums).length).toBeGreaterThan(5);
    for (const [file, sum] of Object.entries(sums))
      expect(sha256(readFileSync(join(siteFolder('root'), file))), file).toBe(sum);
  });
});

describe('the two editions', () => {
  /** A page with addresses below the base path, and with what is named after its content named alike. */
  const bare = (html: string, base: string): string =>
    html
      .replace(/(?<=\/_astro\/[\w.-]+)\.[\w-]{8}(?=\.(css|js|woff2))/g, '')
      .replace(/sha256-[\w+/=]+/g, 'sha256-')
      .replaceAll(new RegExp(`(?<=(href|src|action|value|data-[a-z]+)=")${base}`, 'g'), '/');

  it('have the same pages, save for the base path', () => {
    const [root, sub] = [builtPages('root'), builtPages('sub')];
    expect(sub.map(({ path }) => path)).toEqual(root.map(({ path }) => path));
    const differing = root.filter(
      ({ html }, i) => bare(html, editions.root) !== bare(sub[i]?.html ?? '', editions.sub),
    );
    expect(differing.map(({ path }) => path)).toEqual([]);
  });
});
