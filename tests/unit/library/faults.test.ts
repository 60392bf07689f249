import { symlinkSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { sortFaults, type Fault } from '../../../src/library/faults.ts';
import { loadLibrary } from '../../../src/library/load.ts';
import { copyContent, placeOf, type ContentCopy } from '../../fixtures/content-copy.ts';
import type { FaultCase } from '../../fixtures/faults/fault-case.ts';
import { faultCases } from '../../fixtures/faults/index.ts';
import { fixtureLibrary } from '../../fixtures/library.ts';

let copy: ContentCopy;
beforeEach(() => void (copy = copyContent()));
afterEach(() => copy.remove());

function breakContent({ path, from, to }: FaultCase): void {
  if (from === undefined) copy.write(path, to);
  else copy.edit(path, from, String(to));
}

function expectedPlace({ path, at }: FaultCase): { file: string; line: number; column: number } {
  const place = at === undefined || at === '' ? { line: 1, column: 1 } : placeOf(at, copy.read(path));
  return { file: `${copy.root}/${path}`, ...place };
}

describe('a fault in content', () => {
  it('has a table of at least 40 broken inputs', () => {
    expect(faultCases.length).toBeGreaterThanOrEqual(40);
    expect(new Set(faultCases.map(({ name }) => name)).size).toBe(faultCases.length);
  });

  it.each(faultCases)('is reported where it stands: $name', (broken) => {
    breakContent(broken);
    const { faults, library } = loadLibrary(copy.root);
    const found = faults.filter(({ rule }) => rule === broken.rule);
    expect(library).toBeUndefined();
    const matching = found.filter(({ message }) =>
      typeof broken.message === 'string'
        ? message.startsWith(broken.message) || message.includes(broken.message)
        : broken.message.test(message),
    );
    expect(matching, `faults: ${JSON.stringify(faults, null, 1)}`).toHaveLength(1);
    const { file, line, column } = matching[0] as Fault;
    if (broken.at === '') expect({ file }).toEqual({ file: `${copy.root}/${broken.path}` });
    else expect({ file, line, column }).toEqual(expectedPlace(broken));
  });

  it('never hides another: all faults of all files come in one run, in reading order', () => {
    copy.edit('protocols/wrist.mdx', 'examiner="front"\n', 'examiner="frnt"\n');
    copy.edit('protocols/wrist.mdx', 'scale="strength"', 'scale="strenght"');
    copy.edit('protocols/preparation.mdx', 'Rub the hands', 'Rub {the} hands');
    copy.edit('values/wrist.yaml', 'unit: deg', 'unit: degs');
    copy.write('guides/broken.mdx', '---\ntitle: x\n---\n\n<Oops');
    const { faults } = loadLibrary(copy.root);
    expect(new Set(faults.map(({ file }) => file.slice(copy.root.length + 1)))).toEqual(
      new Set(['guides/broken.mdx', 'protocols/preparation.mdx', 'protocols/wrist.mdx', 'values/wrist.yaml']),
    );
    expect(faults).toEqual(sortFaults(faults));
    expect(faults.map(({ rule }) => rule)).toEqual(
      expect.arrayContaining(['mdx-syntax', 'code-in-content', 'unknown-id', 'unit']),
    );
  });

  it('is not followed by a swarm: what refers to a page that cannot be read is not called unknown', () => {
    copy.edit('protocols/wrist.mdx', '- Stop when it hurts.', '- Stop when it bends <3 degrees.');
    expect(loadLibrary(copy.root).faults.map(({ rule }) => rule)).toEqual(['mdx-syntax']);
  });

  it('does not come from files that a link leads to, nor from what an editor leaves behind', () => {
    symlinkSync('.', `${copy.root}/round`);
    symlinkSync('nowhere', `${copy.root}/protocols/gone.mdx`);
    copy.write('protocols/.wrist.mdx', 'x');
    copy.write('protocols/wrist.mdx~', 'x');
    expect(loadLibrary(copy.root).faults).toEqual([]);
  });

  it.each([
    ['a byte order mark', (text: string) => `\uFEFF${text}`],
    ['the line ends of Windows', (text: string) => text.replaceAll('\n', '\r\n')],
  ])('is not seen in %s', (_name, change) => {
    for (const path of ['protocols/wrist.mdx', 'values/wrist.yaml', 'guides/safety.mdx'])
      copy.write(path, change(copy.read(path)));
    const { faults, library } = loadLibrary(copy.root, { version: fixtureLibrary.version });
    expect(faults).toEqual([]);
    expect(library?.hash).toBe(fixtureLibrary.hash);
  });

  it('is reported for a folder that is not there', () => {
    const { faults } = loadLibrary(`${copy.root}/nowhere`);
    expect(faults).toEqual([
      {
        file: `${copy.root}/nowhere`,
        line: 1,
        column: 1,
        rule: 'file',
        message: 'This is not a folder. Give the path of a content folder, for example "content".',
      },
    ]);
  });
});

describe('a review that is overdue', () => {
  it('is a warning and leaves the library whole', () => {
    const { library, warnings, faults } = loadLibrary(copy.root, { today: '2027-02-01' });
    expect(faults).toEqual([]);
    expect(library?.protocols).toHaveLength(2);
    expect(warnings.map(({ rule, message }) => `${rule}: ${message}`)).toContain(
      'overdue-review: The review of "Wrist" was due on 2027-01-10. Read it again, then set "reviewed" and "reviewDue".',
    );
  });

  it('is told from one that is dated after today', () => {
    const { warnings } = loadLibrary(copy.root, { today: '2026-01-09' });
    expect(warnings.map(({ message }) => message)).toContain(
      'reviewed 2026-01-10 is still to come. Write the day of the last review.',
    );
  });

  it('is not judged without a day', () => {
    expect(loadLibrary(copy.root).warnings).toEqual([]);
  });
});
