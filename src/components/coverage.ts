import type { Urgency } from '../../schemas/common.ts';
import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import type { Protocol } from '../../schemas/protocol.ts';
import type { Source } from '../../schemas/source.ts';
import { urgencies } from '../text/words.ts';
import { referredIds } from './figures-of.ts';

/** One counted table: a row for each subject, a number for each column, sums last where they make sense. */
export interface CountTable {
  /** Headings of the numbers. */
  columns: string[];
  rows: { id: string; label: string; counts: number[] }[];
  sums: number[];
}

type Counter<Subject> = readonly [column: string, count: (subject: Subject) => number];

/** Counts every column for every subject, and adds the columns up. */
function counted<Subject>(
  subjects: readonly { id: string; label: string; of: Subject }[],
  counters: readonly Counter<Subject>[],
): CountTable {
  const rows = subjects.map(({ id, label, of }) => ({ id, label, counts: counters.map(([, count]) => count(of)) }));
  const sums = counters.map((_, i) => rows.reduce((sum, { counts }) => sum + (counts[i] ?? 0), 0));
  return { columns: counters.map(([column]) => column), rows, sums };
}

/** Every system of the vocabulary with its entries; a system without a page has none. */
const systems = ({ systems: all, protocols }: Library) =>
  all.map(({ id, title }) => ({
    id,
    label: title,
    of: protocols.find(({ system }) => system === id)?.manoeuvres ?? [],
  }));

const total =
  (of: (manoeuvre: Manoeuvre) => number) =>
  (manoeuvres: readonly Manoeuvre[]): number =>
    manoeuvres.reduce((sum, manoeuvre) => sum + of(manoeuvre), 0);

const lines = (
  part: 'tell' | 'technique' | 'normal' | 'abnormal' | 'cautions' | 'errors' | 'adaptations' | 'records',
) => total((manoeuvre) => manoeuvre[part].length);

/** How many lines each part of the entries holds, system by system: a nought is a part that nobody wrote. */
export function partsCoverage(library: Library): CountTable {
  return counted(systems(library), [
    ['Entries', (manoeuvres) => manoeuvres.length],
    ['Words to say', lines('tell')],
    ['Steps', lines('technique')],
    ['Normal', lines('normal')],
    ['Abnormal', lines('abnormal')],
    ['Cautions', lines('cautions')],
    ['Errors', lines('errors')],
    ['Adaptations', lines('adaptations')],
    ['Blanks', lines('records')],
  ]);
}

const flagsOf = (urgency: Urgency) =>
  total(({ redFlags }) => redFlags.filter((flag) => flag.urgency === urgency).length);

/** Red flags by urgency, system by system; entries that give a reason for having none; sensitive entries. */
export function safetyCoverage(library: Library): CountTable {
  const labels = { now: 'Now', today: 'Today', soon: 'Soon' } satisfies Record<Urgency, string>;
  return counted(systems(library), [
    ...urgencies.map((urgency) => [labels[urgency], flagsOf(urgency)] as const),
    ['None, with the reason', total(({ noRedFlag }) => (noRedFlag === undefined ? 0 : 1))],
    ['Sensitive', total(({ sensitive }) => (sensitive ? 1 : 0))],
  ]);
}

const distinct = (manoeuvres: readonly Manoeuvre[], kind: 'values' | 'scales' | 'evidence' | 'sources'): Set<string> =>
  new Set(manoeuvres.flatMap((manoeuvre) => referredIds(manoeuvre)[kind]));

/** What the words of each system rest on: figures shown, and sources by how they were read, each counted once a system. */
export function sourcesCoverage(library: Library): CountTable {
  const status = new Map(library.sources.map((source) => [source.id, source.status]));
  const read = (wanted: Source['status']) => (manoeuvres: readonly Manoeuvre[]) =>
    [...distinct(manoeuvres, 'sources')].filter((id) => status.get(id) === wanted).length;
  return counted(systems(library), [
    ['Values', (manoeuvres) => distinct(manoeuvres, 'values').size],
    ['Scales', (manoeuvres) => distinct(manoeuvres, 'scales').size],
    ['Evidence', (manoeuvres) => distinct(manoeuvres, 'evidence').size],
    ['Sources seen', read('seen')],
    ['In abstract', read('abstract')],
    ['From memory', read('memory')],
  ]);
}

const everyEntry = ({ protocols }: Library): Manoeuvre[] => protocols.flatMap(({ manoeuvres }) => manoeuvres);

/** In how many entries each position, instrument and uncovered region serves. */
export function vocabularyCoverage(library: Library): Record<'positions' | 'instruments' | 'exposures', CountTable> {
  const all = everyEntry(library);
  const used = (entries: readonly { id: string; label: string }[], uses: (one: Manoeuvre) => readonly string[]) =>
    counted(
      entries.map(({ id, label }) => ({ id, label, of: all.filter((one) => uses(one).includes(id)) })),
      [
        ['Entries', (manoeuvres) => manoeuvres.length],
        ['Of them screening', (manoeuvres) => manoeuvres.filter(({ scope }) => scope === 'screening').length],
      ],
    );
  return {
    positions: used(library.positions, ({ stages }) => stages.flat()),
    instruments: used(library.instruments, ({ instruments }) => instruments),
    exposures: used(library.exposures, ({ exposure }) => exposure),
  };
}

/** When a page was last read, by whom, and when it falls due; the earliest first. */
export function reviewDates(
  library: Library,
): Pick<Protocol, 'id' | 'title' | 'reviewer' | 'reviewed' | 'reviewDue'>[] {
  return library.protocols.toSorted((a, b) => a.reviewDue.localeCompare(b.reviewDue) || a.order - b.order);
}
