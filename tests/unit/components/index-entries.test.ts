import { describe, expect, it } from 'vitest';
import { indexOf, manoeuvreEntries } from '../../../src/components/index-entries.ts';
import { fixtureLibrary, fixtureManoeuvre } from '../../fixtures/library.ts';

const entriesOf = (title: string, id: string, synonyms: string[]): string[] =>
  manoeuvreEntries({ ...fixtureManoeuvre('wrist-look'), id, title, synonyms }).map(({ words }) => words);

describe('entries of a manoeuvre', () => {
  it('are its title, its subject and its synonyms, which say what they stand for', () => {
    expect(manoeuvreEntries(fixtureManoeuvre('wrist-bend'))).toEqual([
      { words: 'Bend the wrists', to: { kind: 'manoeuvre', id: 'wrist-bend' } },
      { words: 'Wrist bend', to: { kind: 'manoeuvre', id: 'wrist-bend' }, see: 'Bend the wrists' },
      { words: 'Flexion', to: { kind: 'manoeuvre', id: 'wrist-bend' }, see: 'Bend the wrists' },
      { words: 'Range of motion', to: { kind: 'manoeuvre', id: 'wrist-bend' }, see: 'Bend the wrists' },
      { words: 'ROM', to: { kind: 'manoeuvre', id: 'wrist-bend' }, see: 'Bend the wrists' },
    ]);
  });

  it('leave out a misspelling, and keep abbreviations that look alike', () => {
    expect(
      entriesOf('Measure the jugular venous pressure', 'jugular-venous-pressure', ['JVP', 'JVD', 'juglar']),
    ).toEqual(['Measure the jugular venous pressure', 'Jugular venous pressure', 'JVP', 'JVD']);
  });

  it('keep a spelling that stands under another letter', () => {
    expect(entriesOf('Press for swelling', 'ankle-swelling', ['oedema', 'edema'])).toContain('Edema');
  });

  it('give a name in an id its capital', () => {
    expect(entriesOf('Measure lumbar bending', 'modified-schober', ['Schober test'])).toContain('Modified Schober');
  });
});

describe('the index', () => {
  const letters = indexOf(fixtureLibrary);
  const all = letters.flatMap(({ entries }) => entries);

  it('puts every entry under its letter, letters and entries in order', () => {
    expect(letters.map(({ letter }) => letter)).toEqual([...letters.map(({ letter }) => letter)].sort());
    for (const { letter, entries } of letters) {
      const words = entries.map((entry) => entry.words);
      expect(words.every((word) => word.toUpperCase().startsWith(letter))).toBe(true);
      expect(words).toEqual(words.toSorted((a, b) => a.localeCompare(b, 'en-GB', { numeric: true })));
    }
  });

  it('holds every manoeuvre, system, guide and tool', () => {
    const ids = new Set(all.map(({ to }) => `${to.kind} ${to.id}`));
    const { protocols, guides, tools } = fixtureLibrary;
    const expected = [
      ...protocols.map(({ id }) => `system ${id}`),
      ...protocols.flatMap(({ manoeuvres }) => manoeuvres.map(({ id }) => `manoeuvre ${id}`)),
      ...guides.map(({ id }) => `guide ${id}`),
      ...tools.map(({ id }) => `measure ${id}`),
    ];
    expect([...ids].sort()).toEqual(expected.sort());
  });

  it('gathers what starts with a figure or sign under 0–9, first', () => {
    const [protocol] = fixtureLibrary.protocols;
    if (protocol === undefined) throw new Error('the fixture is empty');
    const changed = { ...protocol, title: '4-point check' };
    expect(indexOf({ ...fixtureLibrary, protocols: [changed] })[0]?.letter).toBe('0–9');
  });
});
