import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { settingFaults } from '../../../src/cli/settings.ts';

function run(file: string, ...more: string[]): { status: number | null; out: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [file, ...more], { encoding: 'utf8' });
  return { status, out: stdout + stderr };
}

describe('every command', () => {
  it.each(['build', 'start', 'check', 'plan', 'new', 'budgets', 'fonts'])('has --help: %s', (name) => {
    const { status, out } = run(`src/cli/${name}.ts`, '--help');
    expect(status).toBe(0);
    expect(out).toMatch(new RegExp(`^npm (run )?${name}\\b`));
  });

  it('has --help: test', () => {
    expect(run('tests/run.ts', '--help')).toMatchObject({
      status: 0,
      out: expect.stringMatching(/^npm test/) as string,
    });
  });

  it.each(['build', 'start', 'check', 'plan', 'new', 'budgets'])('says in one line what is wrong: %s', (name) => {
    const { status, out } = run(`src/cli/${name}.ts`, '--nonsense');
    expect(status).toBe(1);
    expect(out).toBe("Unknown option '--nonsense' (see --help).\n");
  });

  it('of new refuses what is no kind of file, be it the name of a built-in', () => {
    expect(run('src/cli/new.ts', 'constructor', 'x')).toMatchObject({ status: 1 });
    expect(run('src/cli/new.ts', 'constructor', 'x').out).toMatch(/^"constructor" is not a kind of file\./);
  });
});

describe('the settings of a build', () => {
  it('are taken when they make sense, and when there are none', () => {
    expect(settingFaults({})).toEqual([]);
    for (const PORT of ['8080', '0']) expect(settingFaults({ PORT })).toEqual([]);
    for (const BASE_PATH of ['', '/', 'sub', '/sub', '/a/b/']) expect(settingFaults({ BASE_PATH })).toEqual([]);
    for (const SITE_URL of ['', 'https://example.org/']) expect(settingFaults({ SITE_URL })).toEqual([]);
  });

  it.each([
    [{ PORT: 'abc' }, 'PORT is "abc"; expected a whole number from 0 to 65535, for example 8080.'],
    [{ PORT: '' }, 'PORT is ""; expected a whole number from 0 to 65535, for example 8080.'],
    [{ PORT: '70000' }, 'PORT is "70000"; expected a whole number from 0 to 65535, for example 8080.'],
    [{ BASE_PATH: '//' }, 'BASE_PATH is "//"; expected a path such as /x/.'],
    [{ BASE_PATH: '/a b/' }, 'BASE_PATH is "/a b/"; expected a path such as /x/.'],
    [{ SITE_URL: 'foo' }, 'SITE_URL is "foo"; expected an address such as https://example.org.'],
    [{ SITE_URL: 'javascript:x' }, 'SITE_URL is "javascript:x"; expected an address such as https://example.org.'],
  ])('are refused: %j', (environment, message) => {
    expect(settingFaults(environment)).toEqual([message]);
  });
});
