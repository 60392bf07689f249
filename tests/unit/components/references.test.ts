import { describe, expect, it } from 'vitest';
import { evidenceColumns, evidenceGroups, valueColumns } from '../../../src/components/figure-columns.ts';
import { referredIds } from '../../../src/components/figures-of.ts';
import { usageOf } from '../../../src/components/usage.ts';
import { fixtureLibrary, fixtureManoeuvre } from '../../fixtures/library.ts';

const [click] = fixtureLibrary.evidence;
const [bend] = fixtureLibrary.values;
if (click === undefined || bend === undefined) throw new Error('the fixture is empty');

describe('what a manoeuvre refers to', () => {
  it('is found in prose, attributes, records and sources, each once', () => {
    expect(referredIds(fixtureManoeuvre('wrist-bend'))).toEqual({
      values: ['wrist-bend'],
      scales: ['strength'],
      evidence: ['wrist-click'],
      tools: ['angle'],
      sources: ['joint-book', 'common-practice'],
    });
  });

  it('includes a value inside a red flag', () => {
    expect(referredIds(fixtureManoeuvre('wrist-look')).values).toEqual(['wrist-bend']);
  });
});

describe('where entries are used', () => {
  const { by, tables } = usageOf(fixtureLibrary);
  const titles = (list: { id: string }[] | undefined) => list?.map(({ id }) => id);

  it('is known for values, scales, evidence and tools', () => {
    expect(titles(by.values.get('wrist-bend'))).toEqual(['wrist-look', 'wrist-bend']);
    expect(titles(by.scales.get('strength'))).toEqual(['wrist-bend']);
    expect(titles(by.evidence.get('wrist-click'))).toEqual(['wrist-bend']);
    expect(titles(by.tools.get('angle'))).toEqual(['wrist-bend']);
  });

  it('lists what rests on a source, other figures included', () => {
    expect(tables.get('joint-book')?.map(({ kind, id }) => `${kind} ${id}`)).toEqual([
      'value wrist-bend',
      'scale strength',
      'evidence wrist-click',
      'measure angle',
    ]);
    expect(tables.get('common-practice')?.map(({ id }) => id)).toEqual(['wrist-bend']);
  });
});

describe('figures side by side', () => {
  it('start with the one in use', () => {
    expect(valueColumns(bend).map(({ figure, source, used }) => [figure, source, used])).toEqual([
      ['70°', 'joint-book', true],
      ['80°', 'common-practice', false],
    ]);
  });

  it('show a range of another source as a range', () => {
    const others = [{ value: { low: 60, high: 75 }, source: 'joint-book', where: 'Table 9' }];
    expect(valueColumns({ ...bend, others })[1]?.figure).toBe('60–75°');
  });

  it('are none where nobody disagrees', () => {
    expect(valueColumns({ ...bend, others: [] })).toEqual([]);
  });

  it('prefer no likelihood ratio', () => {
    expect(evidenceColumns([click])).toEqual([
      {
        figure: 'LR+ 6.2 (1.3–18), LR− 0.5',
        source: 'joint-book',
        where: 'Table 3',
        note: 'a torn ligament. Adults after a fall',
        used: false,
      },
    ]);
  });
});

describe('evidence that disagrees', () => {
  const entry = (id: string, disagreesWith: string[] = []) => ({ ...click, id, disagreesWith });
  const all = [entry('a', ['b']), entry('b'), entry('c', ['b']), entry('d')];
  const groups = (ids: string[]) => evidenceGroups(ids, all).map((group) => group.map(({ id }) => id));

  it('is gathered through a third entry, in either direction', () => {
    expect(groups(['a'])).toEqual([['a', 'b', 'c']]);
    expect(groups(['c', 'd', 'a'])).toEqual([['c', 'b', 'a'], ['d']]);
  });

  it('stands alone where none disagrees', () => {
    expect(groups(['d'])).toEqual([['d']]);
    expect(groups([])).toEqual([]);
  });

  it('refuses an unknown id', () => {
    expect(() => groups(['z'])).toThrow(/"z"/);
  });
});
