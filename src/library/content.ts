import type { CardSet } from '../../schemas/card-set.ts';
import type { Clinic } from '../../schemas/clinic.ts';
import type { Evidence } from '../../schemas/evidence.ts';
import type { FormDefinition } from '../../schemas/form-definition.ts';
import type { Guide } from '../../schemas/guide.ts';
import type { Inline, Line } from '../../schemas/inline.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import type { Priority } from '../../schemas/priority.ts';
import type { Protocol } from '../../schemas/protocol.ts';
import type { Scale } from '../../schemas/scale.ts';
import type { Source } from '../../schemas/source.ts';
import type { Value } from '../../schemas/value.ts';
import type {
  ExaminerPlace,
  Exposure,
  Instrument,
  Landmark,
  Position,
  System,
  Tool,
} from '../../schemas/vocabulary.ts';
import type { At } from './faults.ts';

/** An entry of a YAML table, with the place of each of its parts. */
export interface Entry<T> {
  value: T;
  /** Place of the value at `path` inside the entry; of the entry itself without one. */
  at: (path?: readonly PropertyKey[]) => At;
}

/** The nouns kept as YAML, and their types. */
export interface Tables {
  systems: System;
  positions: Position;
  exposures: Exposure;
  instruments: Instrument;
  examinerPlaces: ExaminerPlace;
  landmarks: Landmark;
  tools: Tool;
  priorities: Priority;
  values: Value;
  scales: Scale;
  evidence: Evidence;
  sources: Source;
  cardSets: CardSet;
  forms: FormDefinition;
  clinics: Clinic;
}
export type TableName = keyof Tables;

/** A reference from prose to something with an id. */
export interface Reference {
  kind:
    Extract<Inline['type'], 'value' | 'scale' | 'evidence' | 'measure'> | 'manoeuvre' | 'system' | 'guide' | 'source';
  id: string;
  at: At;
}

/** A line of prose with its place. */
export interface PlacedLine {
  line: Line;
  at: At;
}

/** A manoeuvre as written, with the places that faults point at. */
export interface ManoeuvreDraft {
  value: Manoeuvre;
  /** Place of an attribute of `<Manoeuvre>`; of the tag itself where the attribute is not written. */
  attribute: (name: string) => At;
  /** Place of a `###` heading; of the tag where it is not written. */
  heading: (name: string) => At;
  tell: PlacedLine[];
  technique: PlacedLine[];
  /** Place of an attribute of the nth `<Record>`. */
  recordAttribute: (index: number, name: string) => At;
}

/** A protocol page as written. */
export interface ProtocolDraft {
  value: Protocol;
  /** Place of a front-matter key. */
  key: (path?: readonly PropertyKey[]) => At;
  manoeuvres: ManoeuvreDraft[];
}

/** A guide as written. */
export interface GuideDraft {
  value: Guide;
  at: At;
}

/** Everything that was read and could be parsed, before rules are applied. */
export interface Content {
  protocols: ProtocolDraft[];
  guides: GuideDraft[];
  tables: { [Name in TableName]: Entry<Tables[Name]>[] };
  references: Reference[];
  /** Ids written in files with a fault: what refers to them is not called unknown as well. */
  unread: ReadonlySet<string>;
  /** Text of each clinic's drawings by path. */
  drawings: ReadonlyMap<string, string>;
  /** Folder that was read, as given, for faults about files that are not there. */
  root: string;
  /** Day to judge overdue reviews by, YYYY-MM-DD; without one they are not judged. */
  today?: string;
}

/** Files a fault: where, by which rule, in words. */
export type Report = (at: At, rule: string, message: string) => void;
