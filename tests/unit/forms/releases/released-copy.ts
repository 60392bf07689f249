import { join } from 'node:path';
import { readdirSync } from 'node:fs';
import { formRelease } from '../../../../src/cli/form-release.ts';
import { buildForm } from '../../../../src/forms/form.ts';
import { shortCode } from '../../../../src/forms/edition.ts';
import { requireLibrary } from '../../../../src/library/load.ts';
import { type ContentCopy, copyContent } from '../../../fixtures/content-copy.ts';

/** The day on which the tests release. */
export const today = '2026-03-01';

const definition = 'forms/whole.yaml';

/** What a sign-off says unless a test says otherwise. */
const sound = {
  reviewer: 'Fixture reviewer',
  approver: 'Fixture lead',
  approved: '2026-02-01',
  reviewDue: '2027-02-01',
};

/** A throw-away copy of the small library's content whose form can be changed, signed off and released. */
export interface ReleasedCopy extends ContentCopy {
  /** Gives the draft a version. */
  version(number: string): void;
  /** Signs the draft as it stands, for its version. */
  sign(changes?: object): void;
  /** Releases the form; what the command prints, and its code. */
  release(day?: string): { text: string; code: number };
  /** Signs and releases; throws with the refusals. */
  publish(number: string): void;
  /** Names of the files of releases. */
  files(): string[];
}

export function releasedCopy(): ReleasedCopy {
  const copy = copyContent();
  const define = (change: (text: string) => string): void => copy.write(definition, change(copy.read(definition)));
  const version = (number: string): void => define((text) => text.replace(/^version: .*$/m, `version: ${number}`));
  const sign = (changes: object = {}): void => {
    define((text) => text.replace(/^signOff:.*\n?/m, ''));
    const draft = buildForm(requireLibrary(copy.root), 'whole');
    const signOff = { version: draft.version, code: shortCode(draft.hash), ...sound, ...changes };
    define((text) => `${text.trimEnd()}\nsignOff: ${JSON.stringify(signOff)}\n`);
  };
  const release = (day = today): { text: string; code: number } => formRelease(copy.root, 'whole', day);
  const publish = (number: string): void => {
    version(number);
    sign();
    const { text, code } = release();
    if (code !== 0) throw new Error(text);
  };
  return { ...copy, version, sign, release, publish, files: () => readdirSync(join(copy.root, 'forms/released')) };
}
