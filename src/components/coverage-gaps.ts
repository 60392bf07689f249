import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import type { Addressable } from '../text/html.ts';
import { usageOf, type Usage } from './usage.ts';

/** Something that the library lacks or has not proved, with the places it concerns. */
export interface Gap {
  /** What is missing, as a heading of the list. */
  words: string;
  /** What it means for a reader. */
  meaning: string;
  places: { words: string; to?: Addressable }[];
}

type Places = Gap['places'];

const entries = (manoeuvres: readonly Manoeuvre[]): Places =>
  manoeuvres.map(({ id, title }) => ({ words: title, to: { kind: 'manoeuvre', id } }));

/** Systems of the vocabulary that have no page. */
const withoutPage = ({ systems, protocols }: Library): Places =>
  systems.filter(({ id }) => !protocols.some(({ system }) => system === id)).map(({ title }) => ({ words: title }));

/** Pages that only their author has read. */
const unread = ({ protocols }: Library): Places =>
  protocols
    .filter(({ reviewer }) => /pending/i.test(reviewer))
    .map(({ id, title }) => ({ words: title, to: { kind: 'system', id } }));

/** Entries whose every source is a habit of the trade, or is quoted from memory. */
function resting(library: Library, on: 'none' | 'memory'): Places {
  const status = new Map(library.sources.map(({ id, status: read }) => [id, read]));
  const weak = ({ sources }: Manoeuvre) => {
    const read = sources.map((id) => status.get(id));
    return on === 'none' ? read.every((one) => one === 'none') : read.includes('memory') && !read.some(checked);
  };
  const checked = (one: string | undefined) => one === 'seen' || one === 'abstract';
  return entries(
    library.protocols.flatMap(({ manoeuvres }) => manoeuvres.filter((one) => one.scope !== 'preparation' && weak(one))),
  );
}

/** Figures in the tables whose source nobody has seen. */
function fromMemory({ values, scales, evidence, sources }: Library): Places {
  const memory = new Set(sources.filter(({ status }) => status === 'memory').map(({ id }) => id));
  const of = (kind: 'value' | 'scale' | 'evidence', list: readonly { id: string; source: string; words: string }[]) =>
    list.filter(({ source }) => memory.has(source)).map(({ id, words }) => ({ words, to: { kind, id } }));
  return [
    ...of(
      'value',
      values.map(({ id, source, label }) => ({ id, source, words: label })),
    ),
    ...of(
      'scale',
      scales.map(({ id, source, title }) => ({ id, source, words: title })),
    ),
    ...of(
      'evidence',
      evidence.map(({ id, source, finding, condition }) => ({ id, source, words: `${finding}: ${condition}` })),
    ),
  ];
}

/** Figures that no entry and no tool shows. */
function unshown(library: Library, { by }: Usage): Places {
  const tools = new Set(library.tools.flatMap(({ values }) => values));
  const evidenceShown = new Set(by.evidence.keys());
  const beside = library.evidence
    .filter(({ id }) => evidenceShown.has(id))
    .flatMap(({ disagreesWith }) => disagreesWith);
  const shown = new Set([...by.values.keys(), ...tools, ...by.scales.keys(), ...evidenceShown, ...beside]);
  const left = <Entry extends { id: string }>(list: readonly Entry[]) => list.filter(({ id }) => !shown.has(id));
  return [
    ...left(library.values).map(({ id, label }) => ({ words: label, to: { kind: 'value' as const, id } })),
    ...left(library.scales).map(({ id, title }) => ({ words: title, to: { kind: 'scale' as const, id } })),
    ...left(library.evidence).map(({ id, finding, condition }) => ({
      words: `${finding}: ${condition}`,
      to: { kind: 'evidence' as const, id },
    })),
  ];
}

/** Words of the vocabularies that no entry uses. */
function unused({ protocols, positions, instruments, exposures }: Library): Places {
  const all = protocols.flatMap(({ manoeuvres }) => manoeuvres);
  const used = new Set(all.flatMap((one) => [...one.stages.flat(), ...one.instruments, ...one.exposure]));
  const needed = [...positions, ...instruments, ...exposures.filter(({ id }) => id !== 'none')];
  return needed.filter(({ id }) => !used.has(id)).map(({ label }) => ({ words: label }));
}

/** What the library still lacks, most serious first; a gap without places is closed and left out. */
export function gapsOf(library: Library): Gap[] {
  const all = library.protocols.flatMap(({ manoeuvres }) => manoeuvres);
  const gaps: Gap[] = [
    { words: 'Systems without a page', meaning: 'Not written yet.', places: withoutPage(library) },
    { words: 'Pages awaiting a second reader', meaning: 'Read by their author alone.', places: unread(library) },
    {
      words: 'Entries resting on common practice alone',
      meaning: 'No published source was found for how they are done or read.',
      places: resting(library, 'none'),
    },
    {
      words: 'Entries whose published sources are all from memory',
      meaning: 'Look the figures up before relying on them.',
      places: resting(library, 'memory'),
    },
    {
      words: 'Figures from memory',
      meaning: 'The source is named and was not seen. Look it up before relying on the figure.',
      places: fromMemory(library),
    },
    {
      words: 'Entries without an adaptation',
      meaning: 'Nothing is said for those who cannot take the position or make the effort.',
      places: entries(all.filter(({ scope, adaptations }) => scope !== 'preparation' && adaptations.length === 0)),
    },
    {
      words: 'Figures that nothing shows',
      meaning: 'In the tables, and on no page.',
      places: unshown(library, usageOf(library)),
    },
    { words: 'Words that no entry uses', meaning: 'In the vocabularies, and never needed.', places: unused(library) },
  ];
  return gaps.filter(({ places }) => places.length > 0);
}
