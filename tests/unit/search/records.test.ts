import { describe, expect, it } from 'vitest';
import type { Library } from '../../../schemas/library.ts';
import type { SearchRecord } from '../../../src/search/record.ts';
import { searchRecords } from '../../../src/search/records.ts';
import { fixtureLibrary } from '../../fixtures/library.ts';

const records = searchRecords(fixtureLibrary);

function recordAt(url: string, among: readonly SearchRecord[] = records): SearchRecord {
  const found = among.find((record) => record.url === url);
  if (found === undefined) throw new Error(`No record has the address ${url}.`);
  return found;
}

const textOf = (record: SearchRecord): string => record.passages.map(({ text }) => text).join(' ');

describe('records of a library', () => {
  it('are one for each system, manoeuvre, tool, guide, card set and form, in page order', () => {
    expect(records.map(({ kind, url }) => [kind, url])).toEqual([
      ['System', '/protocols/preparation/'],
      ['Manoeuvre', '/protocols/preparation/wash-hands/'],
      ['Manoeuvre', '/protocols/preparation/finish-and-explain/'],
      ['System', '/protocols/wrist/'],
      ['Manoeuvre', '/protocols/wrist/wrist-look/'],
      ['Manoeuvre', '/protocols/wrist/wrist-bend/'],
      ['Tool', '/measure/angle/'],
      ['Guide', '/guides/safety/'],
      ['Cards', '/cards/wrist/'],
      ['Form', '/forms/whole/'],
    ]);
  });

  it('are the same each time', () => {
    expect(searchRecords(fixtureLibrary)).toEqual(records);
  });

  it('leave out what a form leaves out, so that it is not found by it', () => {
    const forms = fixtureLibrary.forms.map((form) => ({ ...form, leavesOut: 'Nothing about elbows.' }));
    expect(JSON.stringify(searchRecords({ ...fixtureLibrary, forms }))).not.toContain('elbows');
  });

  it('hold the signs that a form must not miss', () => {
    const forms = fixtureLibrary.forms.map((form) => ({ ...form, mustNotMiss: ['A pulseless hand.'] }));
    const made = searchRecords({ ...fixtureLibrary, forms });
    expect(textOf(recordAt('/forms/whole/', made))).toContain('A pulseless hand.');
  });
});

describe('the record of a manoeuvre', () => {
  const look = recordAt('/protocols/wrist/wrist-look/');
  const bend = recordAt('/protocols/wrist/wrist-bend/');

  it('is known by its id and its synonyms', () => {
    expect(look.names).toEqual(['wrist look', 'inspection', 'swelling', 'rist']);
  });

  it('begins with the aim and quotes no synonym', () => {
    expect(look.passages[0]).toEqual({ text: 'Are the wrists the same shape?', weight: 3 });
    expect(textOf(look)).not.toMatch(/\brist\b|swelling/);
  });

  it('sets a red flag before its action, and holds what is normal and what is not', () => {
    expect(textOf(look)).toContain('A pale cold hand: Loosen anything tight and call for help.');
    expect(textOf(look)).toContain('A hump like a fork');
    expect(textOf(look)).toContain('Both wrists have one shape.');
  });

  it('holds what the evidence is about, without likelihood ratios', () => {
    expect(textOf(bend)).toContain('A click on bending: a torn ligament.');
    expect(textOf(bend)).not.toContain('LR');
  });

  it('can be filtered by system, position of any stage, instrument, scope and kind, in words', () => {
    expect(bend.filters).toEqual({
      kind: ['Manoeuvre'],
      system: ['Wrist'],
      position: ['Sitting', 'Standing'],
      instrument: ['Goniometer'],
      scope: ['Complete'],
    });
  });

  it('shows its system, its first position and how many red flags of each urgency', () => {
    expect(look.shown).toEqual({ system: 'Wrist', position: 'Sitting', flags: '1 now, 1 today' });
    expect(bend.shown).toEqual({ system: 'Wrist', position: 'Sitting' });
  });

  it('says so where the position does not matter', () => {
    expect(recordAt('/protocols/preparation/wash-hands/').shown.position).toBe('Any position');
  });
});

describe('spellings of a record', () => {
  const withAbnormal = (text: string): Library => ({
    ...fixtureLibrary,
    protocols: fixtureLibrary.protocols.map((protocol) => ({
      ...protocol,
      manoeuvres: protocol.manoeuvres.map((one) => ({
        ...one,
        synonyms: [...one.synonyms, 'wrist oedema'],
        abnormal: [[{ type: 'text' as const, text }]],
      })),
    })),
  });
  const made = recordAt('/protocols/wrist/wrist-look/', searchRecords(withAbnormal('Haematoma or tumour.')));

  it('give American words for the text, apart from it', () => {
    expect(made.spellings).toEqual(['hematoma', 'tumor']);
    expect(textOf(made)).not.toContain('hematoma');
  });

  it('give American names beside the British', () => {
    expect(made.names).toContain('wrist oedema');
    expect(made.names).toContain('wrist edema');
  });

  it('add nothing that the page has already', () => {
    const both = searchRecords(withAbnormal('Haematoma, hematoma.'));
    expect(recordAt('/protocols/wrist/wrist-look/', both).spellings).toEqual([]);
  });
});
