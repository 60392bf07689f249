import type { Sides } from '../../schemas/common.ts';
import type { Library } from '../../schemas/library.ts';

/** What a sheet tells of a manoeuvre beside what the plan says. */
export interface SheetEntry {
  id: string;
  title: string;
  sides: Sides;
  /** How many stages it has. */
  stages: number;
  sensitive: boolean;
  /** Address of its page. */
  page: string;
  /** Undefined while they are being fetched. */
  notes: EntryNotes | undefined;
}

/** A finding that cannot wait and what to do at once, as HTML. */
export interface NowNote {
  /** Without a stop at its end: the action follows. */
  finding: string;
  action: string;
}

/** Lines of a manoeuvre as HTML. */
export interface EntryNotes {
  cautions: readonly string[];
  now: readonly NowNote[];
}

/** Everything that a sheet takes its words from. */
export interface SheetWords {
  vocabulary: Pick<Library, 'positions' | 'exposures' | 'instruments' | 'examinerPlaces'>;
  /** Throws RangeError for an unknown id. */
  entry: (id: string) => SheetEntry;
  /** Address of the page that says how to tell who is unwell; undefined in a library without one. */
  unwellPage: string | undefined;
  /** Lines for a manoeuvre that cannot be done as it stands, as HTML; none while they are being fetched. */
  alternatives: (id: string) => readonly string[];
}

/** What the notes of a sheet have come to: there, on their way, or not to be had. */
export type NotesState = 'there' | 'awaited' | 'failed';
