import { describe, expect, it } from 'vitest';
import { cardSetsHolding, formsHolding, neighboursOf } from '../../../src/components/neighbours.ts';
import { recordKindWords, recordNormalWords } from '../../../src/components/record-words.ts';
import { regionsOf } from '../../../src/components/regions.ts';
import { publishedIn, shortSource } from '../../../src/components/source-words.ts';
import type { Source } from '../../../schemas/source.ts';
import { fixtureLibrary, fixtureManoeuvre } from '../../fixtures/library.ts';

describe('neighbours', () => {
  const all = fixtureLibrary.protocols.flatMap(({ manoeuvres }) => manoeuvres.map(({ id }) => id));
  const neighbours = neighboursOf(fixtureLibrary);

  it('lead through the whole library, once, from its first entry to its last', () => {
    const walked: string[] = [];
    for (let at = all[0]; at !== undefined; at = neighbours.get(at)?.next?.id) walked.push(at);
    expect(walked).toEqual(all);
  });

  it('lead back', () => {
    for (const id of all) {
      const next = neighbours.get(id)?.next;
      if (next !== undefined) expect(neighbours.get(next.id)?.previous?.id).toBe(id);
    }
    expect(neighbours.get(all[0] ?? '')?.previous).toBeUndefined();
  });
});

describe('what holds a manoeuvre', () => {
  const look = fixtureManoeuvre('wrist-look');
  const [form] = fixtureLibrary.forms;
  const [set] = fixtureLibrary.cardSets;
  if (form === undefined || set === undefined) throw new Error('the fixture is empty');

  it('is a form that names its scope or its id', () => {
    const forms = [
      { ...form, id: 'by-scope', scopes: ['screening' as const], manoeuvres: [] },
      { ...form, id: 'by-name', scopes: [], manoeuvres: ['wrist-look'] },
      { ...form, id: 'neither', scopes: ['extended' as const], manoeuvres: ['wrist-bend'] },
    ];
    expect(formsHolding(look, { forms }).map(({ id }) => id)).toEqual(['by-scope', 'by-name']);
  });

  it('is a card set of its system and scope', () => {
    const cardSets = [
      { ...set, id: 'all' },
      { ...set, id: 'right-scope', scopes: ['screening' as const] },
      { ...set, id: 'wrong-scope', scopes: ['extended' as const] },
      { ...set, id: 'elsewhere', system: 'preparation' },
    ];
    expect(cardSetsHolding(look, { cardSets }).map(({ id }) => id)).toEqual(['all', 'right-scope']);
  });
});

describe('records in words', () => {
  const records = [...fixtureManoeuvre('wrist-look').records, ...fixtureManoeuvre('wrist-bend').records];
  const words = new Map(
    records.map((record) => [
      record.id,
      [recordKindWords(record, fixtureLibrary), recordNormalWords(record, fixtureLibrary)],
    ]),
  );

  it.each<[string, string, string | undefined]>([
    ['wrist-shape', 'Normal, abnormal or not examined; right and left', undefined],
    ['wrist-note', 'Words', undefined],
    ['wrist-angle', 'Number, 0–120°; right and left', 'at least 70° (elsewhere 80°)'],
    ['wrist-strength', 'Grade, 0, 1, 2; left', '2, holds against the hand'],
    ['wrist-click', 'One of: none; one; many; with the side used', 'none'],
  ])('%s: %s; normal %s', (id, kind, normal) => {
    expect(words.get(id)).toEqual([kind, normal]);
  });
});

describe('sources in words', () => {
  const source: Source = {
    id: 's',
    kind: 'published',
    authors: '',
    title: 'T',
    where: 'W',
    status: 'seen',
    year: 2002,
  };

  it.each([
    ['McGee S', 'McGee 2002'],
    ['Lederle FA, Simel DL', 'Lederle and Simel 2002'],
    ['Seth R, Magner P, Matzinger F, van Walraven C', 'Seth and others 2002'],
    ['van Walraven C, Seth R', 'van Walraven and Seth 2002'],
    ['Simel DL, Rennie D (editors)', 'Simel and Rennie 2002'],
    ['US Preventive Services Task Force', 'US Preventive Services Task Force 2002'],
    ['World Health Organization, with others', 'World Health Organization 2002'],
    ['Resuscitation Council UK', 'Resuscitation Council UK 2002'],
  ])('%s is %s', (authors, short) => {
    expect(shortSource({ ...source, authors })).toBe(short);
  });

  it('name common practice as such, without a year', () => {
    const [practice] = fixtureLibrary.sources.filter(({ kind }) => kind === 'practice');
    if (practice === undefined) throw new Error('the fixture has no common practice');
    expect(shortSource(practice)).toBe('Common practice');
    expect(publishedIn(practice)).toBe('');
  });

  it('say where they came out', () => {
    expect(publishedIn({ ...source, container: 'J Gen Intern Med 17(11):861–865' })).toBe(
      'J Gen Intern Med 17(11):861–865, 2002',
    );
  });
});

describe('regions', () => {
  it('hold every protocol once and leave out an empty region', () => {
    const regions = regionsOf(fixtureLibrary);
    expect(regions.map(({ label, protocols }) => [label, protocols.map(({ id }) => id)])).toEqual([
      ['The whole patient', ['preparation']],
      ['Limbs and back', ['wrist']],
    ]);
  });
});
