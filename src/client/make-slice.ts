import type { FormDefinition } from '../../schemas/form-definition.ts';
import type { Inline } from '../../schemas/inline.ts';
import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import type { Scale } from '../../schemas/scale.ts';
import type { Source } from '../../schemas/source.ts';
import type { Value } from '../../schemas/value.ts';

/** What of a manoeuvre its run sheet and its items on a form need, and the names that it is looked up by. */
const ofManoeuvre = [
  ...(['id', 'system', 'title', 'scope', 'sensitive', 'stages', 'exposure', 'examiner', 'instruments'] as const),
  ...(['seconds', 'sides', 'after', 'derivedAfter', 'cautions', 'redFlags', 'records', 'sources', 'synonyms'] as const),
] satisfies (keyof Manoeuvre)[];

const ofExam = [
  ...(['id', 'title', 'purpose', 'leavesOut', 'mustNotMiss', 'scopes', 'manoeuvres', 'start'] as const),
] satisfies (keyof FormDefinition)[];

const ofSource = [
  ...(['id', 'kind', 'authors', 'title', 'year', 'container', 'where', 'doi', 'url', 'status'] as const),
] satisfies (keyof Source)[];

type SliceManoeuvre = Pick<Manoeuvre, (typeof ofManoeuvre)[number]>;
type SliceExam = Pick<FormDefinition, (typeof ofExam)[number]>;

/** The part of the Library that forms are made from in a browser. */
export interface MakeSlice extends Pick<Library, 'version' | 'exposures' | 'evidence' | 'tools'> {
  systems: { id: string; title: string }[];
  /** Systems in order of examination. */
  protocols: { id: string; manoeuvres: SliceManoeuvre[] }[];
  forms: SliceExam[];
  positions: Library['positions'];
  values: Omit<Value, 'appliesTo' | 'label' | 'note'>[];
  scales: Scale[];
  sources: Pick<Source, (typeof ofSource)[number]>[];
}

/** Cuts the slice: what forms say, without what only pages say. */
export function makeSlice(library: Library): MakeSlice {
  const { version, systems, protocols, forms, positions, exposures, values, scales, sources, tools } = library;
  return {
    ...{ version, positions, exposures, scales, tools, evidence: evidenceOf(library) },
    systems: systems.map(({ id, title }) => ({ id, title })),
    protocols: protocols.map(({ id, manoeuvres }) => ({
      id,
      manoeuvres: manoeuvres.map((one) => pick(one, ofManoeuvre)),
    })),
    forms: forms.map((form) => pick(form, ofExam)),
    values: values.map(({ appliesTo: _whom, label: _label, note: _note, ...value }) => value),
    sources: sources.map((source) => pick(source, ofSource)),
  };
}

function pick<Whole extends object, Key extends keyof Whole>(whole: Whole, keys: readonly Key[]): Pick<Whole, Key> {
  return Object.fromEntries(keys.flatMap((key) => (key in whole ? [[key, whole[key]]] : []))) as Pick<Whole, Key>;
}

/** The evidence that lines of forms quote, with the figures of other sources that stand beside it. */
function evidenceOf({ protocols, evidence }: Library): Library['evidence'] {
  const quoted = new Set(protocols.flatMap(({ manoeuvres }) => manoeuvres.flatMap(quotedBy)));
  const beside = new Set(evidence.filter(({ id }) => quoted.has(id)).flatMap(({ disagreesWith }) => disagreesWith));
  return evidence.filter(({ id }) => quoted.has(id) || beside.has(id));
}

function quotedBy({ cautions, redFlags, records }: Manoeuvre): string[] {
  const normals = records.flatMap((record) => (record.kind === 'finding' ? [record.normal] : []));
  return [...cautions, ...redFlags.flatMap(({ finding, action }) => [finding, action]), ...normals]
    .flat()
    .flatMap(evidenceIds);
}

function evidenceIds(part: Inline): string[] {
  if ('children' in part) return part.children.flatMap(evidenceIds);
  return part.type === 'evidence' ? [part.id] : [];
}

/** A Library for the makers of forms, which read nothing but what the slice holds; all else is left empty. */
export function libraryOfSlice(slice: MakeSlice): Library {
  return {
    ...emptyLibrary,
    ...slice,
    systems: slice.systems.map((system) => ({ ...emptySystem, ...system })),
    protocols: slice.protocols.map(({ id, manoeuvres }, order) => ({
      ...{ ...emptyProtocol, id, title: '', system: id, order },
      manoeuvres: manoeuvres.map((one) => ({ ...emptyManoeuvre, ...one })),
    })),
    forms: slice.forms.map((form) => ({ ...emptyForm, ...form })),
    values: slice.values.map((value) => ({ ...value, appliesTo: '', label: '' }) as Value),
    sources: slice.sources.map((source) => ({ ...source })),
  };
}

const nowhere = { file: '', line: 1, column: 1 };

const emptyLibrary = {
  ...{ hash: '', guides: [], instruments: [], examinerPlaces: [], landmarks: [], priorities: [] },
  ...{ cardSets: [], clinics: [] },
};

const emptySystem = { region: 'whole' as const };

const emptyProtocol = {
  ...{ summary: '', author: '', reviewer: '', reviewed: '', reviewDue: '' },
  ...{ sources: [], opening: [], place: nowhere },
};

const emptyManoeuvre = {
  ...{ aim: [], tell: [], technique: [], normal: [], abnormal: [] },
  ...{ errors: [], adaptations: [], card: [], place: nowhere },
};

const emptyForm = { url: '', version: '', publisher: '', copyright: '', author: '', drafted: '' };
