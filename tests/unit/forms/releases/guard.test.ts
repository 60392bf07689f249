import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { guardReleases } from '../../../../src/forms/releases/guard.ts';
import { loadReleases } from '../../../../src/forms/releases/load.ts';
import { current, newest, standingOf } from '../../../../src/forms/releases/released-forms.ts';
import { faultLine } from '../../../../src/library/faults.ts';
import { loadLibrary } from '../../../../src/library/load.ts';
import { present } from '../../../fixtures/present.ts';
import { type ReleasedCopy, releasedCopy } from './released-copy.ts';

const first = 'forms/released/whole@1.0.0.json';
const second = 'forms/released/whole@1.1.0.json';
const record = '<Record id="wrist-note"';
const page = 'protocols/wrist.mdx';

let copy: ReleasedCopy;
beforeEach(() => {
  copy = releasedCopy();
  copy.publish('1.0.0');
  copy.edit(page, record, `<Record id="wrist-skin" label="Skin" kind="text" />\n${record}`);
  copy.publish('1.1.0');
});
afterEach(() => {
  copy.remove();
});

const guarded = (today = '2026-03-01') => guardReleases(copy.root, loadLibrary(copy.root).library, today);
const faults = (): string[] => guarded().faults.map((fault) => faultLine(fault).slice(copy.root.length + 1));
const withdraw = (entries: string): void => copy.write('forms/released/withdrawn.yaml', entries);

describe('the guard', () => {
  it('has nothing to say of two sound releases and their draft', () => {
    expect(guarded()).toEqual({ faults: [], warnings: [] });
  });

  it.each([
    ['a word', 'Do not lift a broken arm.', 'Do lift a broken arm.'],
    ['the version', '"version": "1.0.0"', '"version": "1.0.1"'],
    ['the date', '"date": "2026-02-01"', '"date": "2026-02-02"'],
    ['the sign-off', 'Fixture lead', 'Somebody else'],
    ['the status', '"status": "active"', '"status": "retired"'],
    ['the seal', '"seal": "', '"seal": "0'],
    ['the syntax', '"seal"', 'seal'],
    ['a key', '"purpose"', '"purpoise"'],
  ])('finds a released file with %s edited', (_, from, to) => {
    copy.edit(first, from, to);
    expect(faults()[0]).toMatch(/^forms\/released\/whole@1\.0\.0\.json:1:1 {2}A released file is never edited/);
  });

  it('finds a release that is gone, by the one that follows it', () => {
    rmSync(join(copy.root, first));
    expect(faults()).toEqual([
      `${second}:1:1  It follows release 1.0.0 as it was sealed then, but before it stands no release. Restore what was released before it.`,
    ]);
  });

  it('finds a file that was renamed, and one that is no release', () => {
    copy.write('forms/released/whole@1.0.5.json', copy.read(first));
    copy.write('forms/released/notes.txt', 'x');
    expect(faults()).toEqual([
      'forms/released/notes.txt:1:1  This is no release. Releases are called FORM@VERSION.json; withdrawals stand in withdrawn.yaml.',
      'forms/released/whole@1.0.5.json:1:1  The file holds whole@1.0.0.json. Give it that name back.',
    ]);
  });

  it.each([
    ['words', 'Do not lift a broken arm.', 'Never lift a broken arm.', 'patch', '1.1.1'],
    ['a new blank', record, `<Record id="wrist-hair" label="Hair" kind="text" />\n${record}`, 'minor', '1.2.0'],
    ['a blank that is gone', '<Record id="wrist-skin" label="Skin" kind="text" />', '', 'major', '2.0.0'],
  ])('finds a draft that changed by %s under the released version', (_, from, to, size, needed) => {
    copy.edit(page, from, to);
    expect(faults()).toEqual([
      expect.stringMatching(
        `^forms/whole\\.yaml:7:1  The version 1\\.1\\.0 is too small: since release 1\\.1\\.0 there is a ${size} change`,
      ),
    ]);
    copy.version(needed);
    expect(faults()).toEqual([]);
  });

  it('finds a draft below its release, another address, and a definition that is gone', () => {
    copy.version('1.0.9');
    expect(faults()).toEqual(['forms/whole.yaml:7:1  The version 1.0.9 is below 1.1.0, which is released. Raise it.']);
    copy.edit('forms/whole.yaml', '.example/forms/whole', '.example/forms/other');
    expect(faults().join('\n')).toMatch(
      /forms\/whole\.yaml:6:1 {2}The permanent address is ".*other"; released as ".*whole"/,
    );
    copy.write('forms/whole.yaml', copy.read('forms/whole.yaml').replace('id: whole', 'id: other'));
    expect(faults().join('\n')).toContain('The form "whole" has no definition any more.');
  });

  it('finds a linkId that comes back with another meaning, not one that comes back as it was', () => {
    copy.edit(page, '<Record id="wrist-skin" label="Skin" kind="text" />', '');
    copy.publish('2.0.0');
    copy.edit(page, record, `<Record id="wrist-skin" label="Skin" kind="finding" normal="Whole" />\n${record}`);
    copy.version('3.0.0');
    expect(faults().join()).toContain('The linkId "wrist-skin" meant something else in release 1.1.0.');
    copy.edit(page, 'label="Skin" kind="finding" normal="Whole"', 'label="Skin of the wrist" kind="text"');
    expect(faults()).toEqual([]);
  });

  it('warns of a release in use whose review is overdue, and of no other', () => {
    expect(guarded('2027-02-02').warnings.map(faultLine)).toEqual([
      `${copy.root}/${second}:1:1  The review of this release was due on 2027-02-01. Have it read again and released anew, or withdraw it.`,
    ]);
  });
});

describe('a withdrawal', () => {
  const entry = (version: string, more = ''): string =>
    `- form: whole\n  version: ${version}\n  withdrawn: 2026-02-20\n  by: Fixture lead\n  reason: A wrong limit.\n${more}`;
  const forms = () => present(loadReleases(copy.root).forms.get('whole'));

  it('marks the release as retired with its reason, and leaves its content and file as they are', () => {
    const before = copy.read(second);
    const [, was] = forms();
    withdraw(entry('1.1.0', '  replacement: 1.0.0\n'));
    const [old, now] = forms();
    expect(now).toEqual({
      ...was,
      status: 'retired',
      withdrawal: { withdrawn: '2026-02-20', by: 'Fixture lead', reason: 'A wrong limit.', replacement: '1.0.0' },
    });
    expect(copy.read(second)).toBe(before);
    expect(guarded().faults).toEqual([]);
    expect(standingOf(present(now), forms())).toBe('withdrawn');
    expect(current(forms())?.version).toBe(old.version);
    expect(newest(forms()).version).toBe('1.1.0');
  });

  it('can leave nothing in use', () => {
    withdraw(entry('1.1.0') + entry('1.0.0'));
    expect(current(forms())).toBeUndefined();
  });

  it.each([
    ['an unknown release', entry('7.0.0'), 'There is no release 7.0.0 of "whole". Releases: 1.0.0, 1.1.0.'],
    ['the same twice', entry('1.0.0') + entry('1.0.0'), 'Release 1.0.0 of "whole" is withdrawn twice. Keep one entry.'],
    [
      'itself as replacement',
      entry('1.0.0', '  replacement: 1.0.0\n'),
      'The replacement 1.0.0 is not a release of "whole" that is in use.',
    ],
    [
      'a withdrawn replacement',
      entry('1.0.0') + entry('1.1.0', '  replacement: 1.0.0\n'),
      'The replacement 1.0.0 is not a release',
    ],
    ['no reason', entry('1.0.0').replace(/ {2}reason.*\n/, ''), '"reason" is missing. Expected text.'],
  ])('that names %s is a fault', (_, text, message) => {
    withdraw(text);
    expect(faults().join('\n')).toMatch(/^forms\/released\/withdrawn\.yaml:\d+:\d+ {2}/);
    expect(faults().join('\n')).toContain(message);
  });
});
