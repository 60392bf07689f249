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

/** Lines of a manoeuvre as HTML. */
export interface EntryNotes {
  cautions: readonly string[];
  /** Findings that ask to stop and act. */
  now: readonly string[];
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
