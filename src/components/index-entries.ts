import damerau from 'damerau-levenshtein';
import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';

/** One line at the back of the book. */
export interface IndexEntry {
  words: string;
  /** What it leads to. */
  to: { kind: 'manoeuvre' | 'system' | 'guide' | 'measure'; id: string };
  /** Title that a synonym stands for. */
  see?: string;
}

/** Lines under one letter, in alphabetical order. */
export interface IndexLetter {
  letter: string;
  entries: IndexEntry[];
}

const order = new Intl.Collator('en-GB', { sensitivity: 'base', numeric: true });

/** Returns the index of the whole library: titles, subjects and synonyms, letter by letter. */
export function indexOf(library: Library): IndexLetter[] {
  const entries = allEntries(library).sort(
    (a, b) => order.compare(a.words, b.words) || order.compare(a.to.id, b.to.id),
  );
  const letters = new Map<string, IndexEntry[]>();
  for (const entry of entries) {
    const letter = firstLetter(entry.words);
    letters.set(letter, [...(letters.get(letter) ?? []), entry]);
  }
  return [...letters]
    .map(([letter, list]) => ({ letter, entries: list }))
    .sort((a, b) => order.compare(a.letter, b.letter));
}

function allEntries(library: Library): IndexEntry[] {
  const titles = (kind: IndexEntry['to']['kind'], entries: readonly { id: string; title: string }[]): IndexEntry[] =>
    entries.map(({ id, title }) => ({ words: title, to: { kind, id } }));
  return [
    ...titles('system', library.protocols),
    ...titles('guide', library.guides),
    ...titles('measure', library.tools),
    ...library.protocols.flatMap(({ manoeuvres }) => manoeuvres.flatMap(manoeuvreEntries)),
  ];
}

/** Returns a manoeuvre's title, its subject as its id names it, and its synonyms without misspellings. */
export function manoeuvreEntries(manoeuvre: Manoeuvre): IndexEntry[] {
  const { id, title } = manoeuvre;
  const to = { kind: 'manoeuvre', id } as const;
  const subject = subjectOf(manoeuvre);
  const others = withoutMisspellings([subject, ...manoeuvre.synonyms], title);
  return [{ words: title, to }, ...others.map((words) => ({ words: sentenceCase(words), to, see: title }))];
}

/** The id as words, with the capitals that the synonyms or the title give them: "modified-schober" is "Modified Schober". */
function subjectOf({ id, title, synonyms }: Manoeuvre): string {
  const written = [...synonyms, title].flatMap((text) => text.split(/[^\p{L}’'-]+/u));
  const capital = (word: string) =>
    written.find((other) => other.toLowerCase() === word && other !== word && !title.startsWith(other)) ?? word;
  return sentenceCase(id.split('-').map(capital).join(' '));
}

/**
 * Leaves out a synonym that differs by one or two letters from something earlier in the list or from a word of it:
 * a misspelling or another ending, which helps a search and clutters an index. Abbreviations and words that start
 * with another letter, such as American spellings, stay.
 */
function withoutMisspellings(candidates: readonly string[], title: string): string[] {
  const kept: string[] = [];
  for (const candidate of candidates) {
    const earlier = [...kept, ...kept.flatMap(wordsOf), ...wordsOf(title)];
    if (!earlier.some((other) => nearlyAlike(candidate.toLowerCase(), other.toLowerCase()))) kept.push(candidate);
  }
  return kept;
}

const wordsOf = (text: string): string[] => text.split(/\s+/);

function nearlyAlike(a: string, b: string): boolean {
  if (a === b) return true;
  if (Math.min(a.length, b.length) < 5 || a[0] !== b[0]) return false;
  return damerau(a, b).steps <= 2;
}

const sentenceCase = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function firstLetter(words: string): string {
  const letter = words.normalize('NFD').charAt(0).toUpperCase();
  return /[A-Z]/.test(letter) ? letter : '0–9';
}
