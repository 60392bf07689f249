import { spawnSync } from 'node:child_process';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { copyContent, type ContentCopy } from '../../fixtures/content-copy.ts';

let copy: ContentCopy;
beforeEach(() => void (copy = copyContent()));
afterEach(() => {
  copy.remove();
});

function check(...more: string[]): { status: number | null; out: string } {
  const run = spawnSync(process.execPath, ['src/cli/check.ts', ...more], { encoding: 'utf8' });
  return { status: run.status, out: run.stdout };
}

describe('npm run check', () => {
  it('says what a sound folder holds and exits with 0', () => {
    expect(check(copy.root)).toEqual({
      status: 0,
      out: `No fault in ${copy.root}: 2 systems, 4 manoeuvres, 1 values, 2 sources.\n`,
    });
    expect(check(copy.root, '--json')).toEqual({ status: 0, out: '[]\n' });
  });

  it('says which clinics there are when CLINIC names none, and that an edition fits when it names one', () => {
    copy.write('clinics/elm/clinic.yaml', 'id: elm\nname: Elm House (invented)\npaper: a4\n');
    const as = (CLINIC: string): string =>
      spawnSync(process.execPath, ['src/cli/check.ts', copy.root], {
        encoding: 'utf8',
        env: { ...process.env, CLINIC },
      }).stdout;
    expect(as('oak')).toBe(
      `${copy.root}/clinics:1:1  CLINIC is "oak", which is no clinic of content/clinics/. Clinics: elm.\n`,
    );
    expect(as('elm')).toMatch(/2 sources\. The edition of Elm House \(invented\) fits\.\n$/);
  });

  it('prints one line per fault, path:line:column and two spaces first, and exits with 1', () => {
    copy.edit('protocols/wrist.mdx', 'scale="strength"', 'scale="strenght"');
    copy.edit('values/wrist.yaml', 'source: joint-book', 'source: joint-boook');
    const { status, out } = check(copy.root);
    expect(status).toBe(1);
    const lines = out.trimEnd().split('\n');
    expect(lines).toHaveLength(2);
    expect(lines[0]).toMatch(
      /protocols\/wrist\.mdx:\d+:\d+ {2}scale "strenght" is not known\. Did you mean "strength"\?/,
    );
    expect(lines[1]).toMatch(/values\/wrist\.yaml:\d+:\d+ {2}source "joint-boook" is not known\./);
  });

  it('prints faults as JSON with exactly the promised keys', () => {
    copy.edit('protocols/wrist.mdx', 'scale="strength"', 'scale="strenght"');
    const { status, out } = check(copy.root, '--json');
    const faults = JSON.parse(out) as object[];
    expect(status).toBe(1);
    expect(faults.map((fault) => Object.keys(fault).sort())).toEqual([['column', 'file', 'line', 'message', 'rule']]);
  });

  it.each([
    ['--jsn', "Unknown option '--jsn' (see --help).\n"],
    ['--json=1', "Option '--json' does not take an argument (see --help).\n"],
    ['another', '"another" is one name too many (see --help).\n'],
  ])('says in a line that it was called wrongly with %s', (wrong, out) => {
    expect(check('content', wrong)).toEqual({ status: 1, out });
  });

  it('has --help', () => {
    const { status, out } = check('--help');
    expect(status).toBe(0);
    expect(out).toContain('--json');
  });
});
