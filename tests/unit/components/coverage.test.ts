import { describe, expect, it } from 'vitest';
import { gapsOf } from '../../../src/components/coverage-gaps.ts';
import {
  partsCoverage,
  reviewDates,
  safetyCoverage,
  sourcesCoverage,
  vocabularyCoverage,
} from '../../../src/components/coverage.ts';
import { fixtureLibrary, fixtureManoeuvre } from '../../fixtures/library.ts';

const cell = (table: ReturnType<typeof partsCoverage>, row: string, column: string): number | undefined =>
  table.rows.find(({ id }) => id === row)?.counts[table.columns.indexOf(column)];

const manoeuvres = fixtureLibrary.protocols.flatMap((protocol) => protocol.manoeuvres);

describe('coverage counts', () => {
  it('every entry once, and adds the systems up', () => {
    const { rows, sums, columns } = partsCoverage(fixtureLibrary);
    expect(rows.map(({ id }) => id)).toEqual(fixtureLibrary.systems.map(({ id }) => id));
    expect(sums[columns.indexOf('Entries')]).toBe(manoeuvres.length);
    expect(sums[columns.indexOf('Steps')]).toBe(manoeuvres.flatMap(({ technique }) => technique).length);
  });

  it('a system without a page as noughts', () => {
    const [first] = fixtureLibrary.protocols;
    const without = { ...fixtureLibrary, protocols: fixtureLibrary.protocols.slice(1) };
    expect(cell(partsCoverage(fixtureLibrary), first?.system ?? '', 'Entries')).toBeGreaterThan(0);
    expect(cell(partsCoverage(without), first?.system ?? '', 'Entries')).toBe(0);
  });

  it('red flags by urgency', () => {
    const { sums, columns } = safetyCoverage(fixtureLibrary);
    const flags = manoeuvres.flatMap(({ redFlags }) => redFlags);
    for (const [words, urgency] of [
      ['Now', 'now'],
      ['Today', 'today'],
      ['Soon', 'soon'],
    ] as const) {
      expect(sums[columns.indexOf(words)]).toBe(flags.filter((flag) => flag.urgency === urgency).length);
    }
    expect(flags.length).toBeGreaterThan(0);
  });

  it('a source once a system, by how it was read', () => {
    const look = fixtureManoeuvre('wrist-look');
    const protocol = fixtureLibrary.protocols.find(({ manoeuvres: all }) => all.some(({ id }) => id === look.id));
    if (protocol === undefined) throw new Error('the fixture has lost its wrist');
    const twice = { ...protocol, manoeuvres: [look, { ...look, id: 'wrist-look-again' }] };
    const once = { ...protocol, manoeuvres: [look] };
    const row = (one: typeof protocol) =>
      sourcesCoverage({ ...fixtureLibrary, protocols: [one] }).rows.find(({ id }) => id === protocol.system)?.counts;
    expect(row(twice)).toEqual(row(once));
    expect(row(once)?.some((count) => count > 0)).toBe(true);
  });

  it('where each position and instrument serves', () => {
    const { positions, instruments } = vocabularyCoverage(fixtureLibrary);
    const look = fixtureManoeuvre('wrist-look');
    for (const id of look.stages.flat()) expect(cell(positions, id, 'Entries')).toBeGreaterThan(0);
    for (const { id } of instruments.rows) {
      const users = manoeuvres.filter((one) => one.instruments.includes(id));
      expect(cell(instruments, id, 'Entries')).toBe(users.length);
    }
  });

  it('review dates with the earliest due first', () => {
    const [first] = fixtureLibrary.protocols;
    if (first === undefined) throw new Error('the fixture is empty');
    const late = { ...first, id: 'late', reviewDue: '2099-01-01' };
    const early = { ...first, id: 'early', reviewDue: '2001-01-01' };
    const dates = reviewDates({ ...fixtureLibrary, protocols: [late, early] });
    expect(dates.map(({ id }) => id)).toEqual(['early', 'late']);
  });
});

describe('gaps', () => {
  const placesOf = (library: typeof fixtureLibrary, words: RegExp) =>
    gapsOf(library)
      .find((gap) => words.test(gap.words))
      ?.places.map((place) => place.words);

  it('name a system without a page, and an instrument that nobody needs', () => {
    const [system] = fixtureLibrary.systems;
    const [instrument] = fixtureLibrary.instruments;
    if (system === undefined || instrument === undefined) throw new Error('the fixture is empty');
    const more = {
      ...fixtureLibrary,
      systems: [...fixtureLibrary.systems, { ...system, id: 'nowhere', title: 'Nowhere' }],
      instruments: [...fixtureLibrary.instruments, { ...instrument, id: 'idle', label: 'Idle' }],
    };
    expect(placesOf(more, /without a page/)).toContain('Nowhere');
    expect(placesOf(more, /no entry uses/)).toContain('Idle');
  });

  it('name a page that only its author has read', () => {
    const [first] = fixtureLibrary.protocols;
    if (first === undefined) throw new Error('the fixture is empty');
    const unread = { ...fixtureLibrary, protocols: [{ ...first, reviewer: 'Clinical review pending' }] };
    const read = { ...fixtureLibrary, protocols: [{ ...first, reviewer: 'Second reader' }] };
    expect(placesOf(unread, /second reader/)).toEqual([first.title]);
    expect(placesOf(read, /second reader/)).toBeUndefined();
  });

  it('name a figure whose source nobody has seen', () => {
    const [value] = fixtureLibrary.values;
    const unseen = fixtureLibrary.sources.map((source) => ({
      ...source,
      status: source.id === value?.source ? ('memory' as const) : ('seen' as const),
    }));
    expect(placesOf({ ...fixtureLibrary, sources: unseen }, /^Figures from memory/)).toContain(value?.label);
    const seen = fixtureLibrary.sources.map((source) => ({ ...source, status: 'seen' as const }));
    expect(placesOf({ ...fixtureLibrary, sources: seen }, /^Figures from memory/)).toBeUndefined();
  });

  it('name an entry without an adaptation, preparation apart', () => {
    const bare = fixtureLibrary.protocols.map((protocol) => ({
      ...protocol,
      manoeuvres: protocol.manoeuvres.map((one) => ({ ...one, adaptations: [] })),
    }));
    const named = placesOf({ ...fixtureLibrary, protocols: bare }, /adaptation/);
    expect(named).toEqual(manoeuvres.filter(({ scope }) => scope !== 'preparation').map(({ title }) => title));
  });
});
