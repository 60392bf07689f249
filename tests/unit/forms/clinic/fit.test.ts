import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { loadEdition } from '../../../../src/forms/clinic/load.ts';
import { changedClinic, clinicFile, soundClinic } from '../../../fixtures/clinic.ts';
import { type ClinicCopy, clinicCopy } from '../../../fixtures/clinic-copy.ts';
import { placeOf } from '../../../fixtures/content-copy.ts';
import { present } from '../../../fixtures/present.ts';

let copy: ClinicCopy;
beforeEach(() => void (copy = clinicCopy()));
afterEach(() => copy.remove());

/** From, to, where the fault points, what it says. */
const misfitting: [name: string, from: string, to: string, at: string, message: string][] = [
  [
    'a pin on what was never released',
    'whole: 1.0.0',
    'whole: 1.0.1',
    'whole: 1.0.1',
    'There is no release 1.0.1 of "whole". Releases: 1.0.0. Pin one of them.',
  ],
  [
    'a hidden record that is not on the form',
    '[wrist-click]',
    '[wrist-clik]',
    'wrist-clik',
    'The hidden record "wrist-clik" is not on whole 1.0.0. Did you mean "wrist-click"? Take it out of "hiddenRecords".',
  ],
  [
    'an anchor that the manoeuvre does not ask for',
    'after: wrist-shape',
    'after: wrist-angle',
    'after: wrist-angle',
    'The added record "elm-cast" stands behind "wrist-angle", which "wrist-look" on whole 1.0.0 does not ask for.',
  ],
  [
    'an addition to a manoeuvre that is hidden',
    'hiddenRecords: [wrist-click]',
    'hidden: [wrist-look]',
    'manoeuvre: wrist-look\n        after',
    'The added record "elm-cast" stands with "wrist-look", which this form hides.',
  ],
  [
    'everything hidden',
    soundClinic.slice(soundClinic.indexOf('hiddenRecords')),
    'hidden: [wrist-look, wrist-bend]\n',
    'form: whole',
    'Everything that whole 1.0.0 asks for is hidden. Keep at least one manoeuvre',
  ],
];

describe('an edition that does not fit its shared form', () => {
  it.each(misfitting)('is a fault: %s', (_, from, to, at, message) => {
    copy.change(from, to);
    const found = copy.guard().faults.filter((fault) => fault.message.startsWith(message));
    expect(found, JSON.stringify(copy.guard().faults, null, 1)).toHaveLength(1);
    const { file, line, column } = present(found[0]);
    expect({ file, line, column }).toEqual({
      file: `${copy.root}/${clinicFile}`,
      ...placeOf(at, changedClinic(from, to)),
    });
    expect(loadEdition(copy.root, 'elm').edition).toBeUndefined();
  });

  it('is built on no withdrawn release', () => {
    copy.publish('1.1.0');
    const entry = { form: 'whole', version: '1.0.0', withdrawn: '2026-03-01', by: 'Lead', reason: 'An error.' };
    copy.write('forms/released/withdrawn.yaml', JSON.stringify([{ ...entry, replacement: '1.1.0' }]));
    expect(copy.guard().faults.map(({ message }) => message)).toEqual([
      'Release 1.0.0 of "whole" is withdrawn: An error. Release to pin instead: 1.1.0.',
    ]);
  });
});

describe('an upgrade of the shared form', () => {
  const grow = (): void => {
    copy.edit('protocols/wrist.mdx', '<Record id="wrist-note" label="Remark"', '<Record id="wrist-note" label="Note"');
    copy.publish('1.1.0');
  };
  const raisePin = (): void => {
    copy.change('whole: 1.0.0', 'whole: 1.1.0');
  };

  it('is announced, and changes nothing until the pin is raised', () => {
    const before = copy.elm().draft('whole');
    grow();
    expect(copy.guard().faults).toEqual([]);
    expect(copy.guard().warnings.map(({ message }) => message)).toEqual([
      expect.stringMatching(/^Release 1\.1\.0 of "whole" is out; the edition is built on 1\.0\.0\./) as string,
    ]);
    expect(copy.elm().draft('whole')).toEqual(before);
  });

  it('reapplies the edition: what is new comes in, what is added and hidden stays so', () => {
    grow();
    raisePin();
    expect(copy.guard()).toEqual({ faults: [], warnings: [] });
    const form = copy.elm().draft('whole');
    expect(form.derivedFrom?.version).toBe('1.1.0');
    const fields = form.sections.flatMap(({ items }) => items.flatMap((item) => item.fields));
    expect(fields.find(({ linkId }) => linkId === 'wrist-note')?.label).toBe('Note');
    expect(fields.some(({ linkId }) => linkId === 'elm-cast')).toBe(true);
    expect(fields.some(({ record }) => record === 'wrist-click')).toBe(false);
  });

  it('names every local item that no longer fits, all at once, with its place', () => {
    copy.edit('protocols/wrist.mdx', 'id="wrist-shape"', 'id="wrist-outline"');
    copy.edit('protocols/wrist.mdx', '<Record id="wrist-click"', '<Record id="wrist-snap"');
    copy.publish('2.0.0');
    copy.change('whole: 1.0.0', 'whole: 2.0.0');
    expect(copy.guard().faults.map(({ line, message }) => `${line} ${message}`)).toEqual([
      '25 The hidden record "wrist-click" is not on whole 2.0.0. Take it out of "hiddenRecords".',
      '28 The added record "elm-cast" stands behind "wrist-shape", which "wrist-look" on whole 2.0.0 does not ask for. Name another record, or leave "after" out.',
    ]);
  });
});
