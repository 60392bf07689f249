import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { formRelease } from '../../../../src/cli/form-release.ts';
import { formOf } from '../../../../src/cli/form-version.ts';
import { shortCode } from '../../../../src/forms/edition.ts';
import { changedClinic, clinicFile } from '../../../fixtures/clinic.ts';
import { type ClinicCopy, clinicCopy } from '../../../fixtures/clinic-copy.ts';
import { today } from '../releases/released-copy.ts';

let copy: ClinicCopy;
beforeEach(() => {
  copy = clinicCopy();
  vi.stubEnv('CLINIC', 'elm');
});
afterEach(() => {
  vi.unstubAllEnvs();
  copy.remove();
});

const released = 'clinics/elm/forms/released/whole@1.0.0.json';

/** Signs the clinic's draft as it stands. */
function sign(): void {
  const code = shortCode(copy.elm().draft('whole').hash);
  const signOff = { version: '1.0.0', code, reviewer: 'Elm reader', approver: 'Elm lead' };
  const dated = { ...signOff, approved: '2026-02-20', reviewDue: '2027-02-20' };
  copy.change('    drafted: 2026-02-10\n', `    drafted: 2026-02-10\n    signOff: ${JSON.stringify(dated)}\n`);
}

describe("release of a clinic's form", () => {
  it('is refused without a sign-off, with the place in the clinic’s file', () => {
    const { text, code } = formRelease(copy.root, 'whole', today);
    expect(code).toBe(1);
    expect(text).toMatch(
      /clinics\/elm\/clinic\.yaml:20:5 {2}The form is not signed off\. Write signOff with version: 1\.0\.0/,
    );
  });

  it('is refused for a form that is not its own, with those that are', () => {
    expect(formRelease(copy.root, 'hole', today)).toEqual({
      text: '"hole" is no form of the clinic\'s own. Did you mean "whole"? Its forms: whole. A shared form is released without CLINIC.',
      code: 1,
    });
  });

  it('freezes the whole merged form in the clinic’s folder, without contacts, which may change any day', () => {
    sign();
    expect(formRelease(copy.root, 'whole', today)).toEqual({ text: `${copy.root}/${released}`, code: 0 });
    expect(copy.read(released)).not.toContain('ext. 0000');
    expect(copy.files()).toEqual(['whole@1.0.0.json']);
    const form = formOf(copy.root, 'whole');
    expect(form).toMatchObject({
      status: 'active',
      url: 'https://elm.example/forms/whole',
      clinic: { name: 'Elm House (invented)' },
      signOff: { author: 'Elm author', approver: 'Elm lead' },
    });
    expect(copy.guard()).toEqual({ faults: [], warnings: [] });
  });

  it('is held to: a draft that changed needs a higher version, a file that was edited is found', () => {
    sign();
    formRelease(copy.root, 'whole', today);
    copy.write(clinicFile, changedClinic('label: Girth', 'label: Girth of the forearm'));
    expect(copy.guard().faults.map(({ line, rule, message }) => `${line} ${rule} ${message.slice(0, 31)}`)).toEqual([
      '22 release-version The version 1.0.0 is too small:',
    ]);
    copy.edit(released, 'Cast or splint', 'Cast');
    expect(copy.guard().faults.map(({ file }) => file)).toContain(`${copy.root}/${released}`);
  });
});
