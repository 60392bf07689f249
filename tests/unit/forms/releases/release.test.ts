import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { loadReleases } from '../../../../src/forms/releases/load.ts';
import { questionnaire } from '../../../../src/forms/questionnaire.ts';
import { codebook } from '../../../../src/forms/codebook.ts';
import { sheetOf } from '../../../../src/forms/paper/sheet.ts';
import { responseSchema } from '../../../../src/forms/response-schema.ts';
import { present } from '../../../fixtures/present.ts';
import { type ReleasedCopy, releasedCopy } from './released-copy.ts';

let copy: ReleasedCopy;
beforeEach(() => void (copy = releasedCopy()));
afterEach(() => {
  copy.remove();
});

const released = () => present(loadReleases(copy.root).forms.get('whole'));

describe('form release', () => {
  it('freezes the signed draft as one file, dated by its approval and never again', () => {
    copy.publish('1.0.0');
    expect(copy.files()).toEqual(['whole@1.0.0.json']);
    const [form] = released();
    expect(form).toMatchObject({ version: '1.0.0', status: 'active', date: '2026-02-01' });
    expect(form.signOff).toEqual({
      author: 'Fixture author',
      reviewer: 'Fixture reviewer',
      approver: 'Fixture lead',
      approved: '2026-02-01',
      reviewDue: '2027-02-01',
    });
    const text = copy.read('forms/released/whole@1.0.0.json');
    expect(copy.release()).toEqual({
      text: expect.stringContaining('Nothing has changed since release 1.0.0.') as string,
      code: 1,
    });
    expect(copy.read('forms/released/whole@1.0.0.json')).toBe(text);
  });

  it('gives the same bytes for the same draft', () => {
    copy.publish('1.0.0');
    const other = releasedCopy();
    other.publish('1.0.0');
    expect(other.read('forms/released/whole@1.0.0.json')).toBe(copy.read('forms/released/whole@1.0.0.json'));
    other.remove();
  });

  it.each([
    ['without a sign-off', {}, 'The form is not signed off. Write signOff with version: 1.0.0, code: "'],
    ['signed for another version', { version: '0.9.0' }, 'The sign-off is for version 0.9.0, the draft is 1.0.0.'],
    ['signed for other content', { code: '00000000' }, 'The sign-off is for content 00000000, the draft’s is '],
    ['reviewed by its author', { reviewer: 'Fixture author' }, 'A form is reviewed by another than its author.'],
    ['approved in the future', { approved: '2026-03-02' }, 'It is approved on 2026-03-02, which is still to come.'],
    ['due before it is approved', { reviewDue: '2026-02-01' }, 'not after 2026-02-01, when it was approved.'],
    ['overdue', { reviewDue: '2026-02-28' }, 'Its review was due on 2026-02-28.'],
  ])('refuses a form %s, at the place to mend', (reason, changes, message) => {
    copy.version('1.0.0');
    if (reason !== 'without a sign-off') copy.sign(changes);
    const { text, code } = copy.release();
    expect(code).toBe(1);
    expect(text.replaceAll("'", '’')).toContain(message.replaceAll("'", '’'));
    expect(text).toMatch(/forms\/whole\.yaml:\d+:1 {2}/);
  });

  it('refuses what was changed after it was signed', () => {
    copy.version('1.0.0');
    copy.sign();
    copy.edit('protocols/wrist.mdx', 'Do not lift a broken arm.', 'Never lift a broken arm.');
    expect(copy.release().text).toMatch(
      /The sign-off is for content [0-9a-f]{8}, the draft's is [0-9a-f]{8}: it changed/,
    );
  });

  it.each([
    ['a reworded caution', 'Do not lift a broken arm.', 'Never lift a broken arm.', '1.0.1'],
    [
      'an added field',
      '<Record id="wrist-note"',
      '<Record id="wrist-skin" label="Skin" kind="text" />\n<Record id="wrist-note"',
      '1.1.0',
    ],
    ['a removed field', '<Record id="wrist-note" label="Remark" kind="text" />', '', '2.0.0'],
  ])('wants a version that is high enough for %s', (_, from, to, needed) => {
    copy.publish('1.0.0');
    copy.edit('protocols/wrist.mdx', from, to);
    const [major = 0, minor = 0, patch = 0] = needed.split('.').map(Number);
    const tooSmall = patch > 0 ? '1.0.0' : minor > 0 ? '1.0.9' : `${major - 1}.9.9`;
    copy.version(tooSmall);
    copy.sign();
    expect(copy.release().text).toContain(`Write version: ${needed}, or a higher one.`);
    copy.publish(needed);
    expect(copy.files()).toEqual(['whole@1.0.0.json', `whole@${needed}.json`]);
    expect(loadReleases(copy.root).faults).toEqual([]);
  });

  it('renews a sign-off under a higher version though nothing changed', () => {
    copy.publish('1.0.0');
    copy.publish('1.0.1');
    const [first, second] = released();
    expect(second?.hash).toBe(first.hash);
  });
});

describe('a release', () => {
  it('says in every format what it said, whatever becomes of the content', () => {
    copy.publish('1.0.0');
    const written = () => {
      const [form] = released();
      return JSON.stringify([form, questionnaire(form), responseSchema(form), codebook(form), sheetOf(form, 'a4')]);
    };
    const before = written();
    copy.edit('protocols/wrist.mdx', 'Do not lift a broken arm.', 'Another caution.');
    copy.edit('protocols/wrist.mdx', 'label="Shape"', 'label="Outline"');
    copy.edit('protocols/wrist.mdx', 'Loosen anything tight and call for help.', 'Wait.');
    copy.edit('scales/strength.yaml', 'meaning:', 'meaning: Altered,');
    copy.edit('vocabulary/positions.yaml', 'label: Sitting', 'label: Perched');
    copy.edit('vocabulary/systems.yaml', 'title: Wrist', 'title: Carpus');
    copy.edit('forms/whole.yaml', 'leavesOut: Nothing.', 'leavesOut: All.');
    copy.edit('values/wrist.yaml', 'value: ', 'value: 1');
    expect(written()).toBe(before);
  });
});
