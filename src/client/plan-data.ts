import type { Library } from '../../schemas/library.ts';
import type { EntryNotes, NotesState, SheetEntry, SheetWords } from '../components/run-sheet-words.ts';
import { inPageOrder } from '../plan/manoeuvres-of.ts';
import type { KnownIds } from './plan-address.ts';
import { libraryOf, type PlanSlice } from './plan-slice.ts';

type ById<T> = Readonly<Record<string, T>>;

/** Files that are fetched when they are first needed, by name. */
interface Later {
  notes: EntryNotes;
  alternatives: string[];
  tell: string[];
  names: string;
}

/** The data of the page: the slice at once, the rest when it is asked for. */
export class PlanData {
  readonly library: Library;
  readonly slice: PlanSlice;
  readonly known: KnownIds;
  /** What the notes have come to. */
  notes: NotesState = 'awaited';
  readonly #files: string;
  readonly #root: string;
  readonly #here: { [Name in keyof Later]?: ById<Later[Name]> } = {};
  readonly #asked = new Map<keyof Later, Promise<void>>();
  readonly #entries: ReadonlyMap<string, Omit<SheetEntry, 'notes'>>;

  private constructor(slice: PlanSlice, files: string, root: string) {
    this.slice = slice;
    this.library = libraryOf(slice);
    this.#files = files;
    this.#root = root;
    this.#entries = new Map(inPageOrder(this.library).map((one) => [one.id, { ...one, ...this.#shown(one) }]));
    this.known = knownIds(this.library, this.#entries.keys());
  }

  /** Fetches the slice. Rejects when it cannot be had. */
  static async open(files: string, root: string): Promise<PlanData> {
    return new PlanData((await fetched(`${files}slice.json`)) as PlanSlice, files, root);
  }

  /** Fetches a file, once; after a failure the next asking tries again. */
  ask(name: keyof Later): Promise<void> {
    const asked = this.#asked.get(name) ?? this.#fetch(name);
    this.#asked.set(name, asked);
    return asked;
  }

  async #fetch(name: keyof Later): Promise<void> {
    try {
      this.#here[name] = (await fetched(`${this.#files}${name}.json`)) as ById<never>;
      if (name === 'notes') this.notes = 'there';
    } catch (error) {
      if (name === 'notes') this.notes = 'failed';
      this.#asked.delete(name);
      throw error;
    }
  }

  /** What a manoeuvre is also called; empty until the names are there. */
  names(id: string): string {
    return this.#here.names?.[id] ?? '';
  }

  /** What is said to the patient; nothing until it is there. */
  tell(id: string): readonly string[] {
    return this.#here.tell?.[id] ?? [];
  }

  /** The words of sheets, as far as they have come. */
  get words(): SheetWords {
    const unwell = this.#entries.get('unwell-first');
    return {
      vocabulary: this.library,
      entry: (id) => this.#entry(id),
      unwellPage: unwell?.page,
      alternatives: (id) => this.#here.alternatives?.[id] ?? [],
    };
  }

  #entry(id: string): SheetEntry {
    const entry = this.#entries.get(id);
    if (entry === undefined) throw new RangeError(`no manoeuvre has the id "${id}"`);
    return { ...entry, notes: this.#here.notes?.[id] };
  }

  #shown({ id, system, stages }: { id: string; system: string; stages: string[][] }) {
    return { page: `${this.#root}protocols/${system}/${id}/`, stages: stages.length };
  }
}

async function fetched(address: string): Promise<unknown> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return answer.json();
}

function knownIds(library: Library, manoeuvres: Iterable<string>): KnownIds {
  const ids = (entries: readonly { id: string }[]): Set<string> => new Set(entries.map(({ id }) => id));
  return {
    form: ids(library.forms),
    systems: ids(library.protocols),
    manoeuvres: new Set(manoeuvres),
    positions: ids(library.positions),
    instruments: ids(library.instruments),
  };
}
