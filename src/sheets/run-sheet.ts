import type { ContactRow } from '../text/contacts.ts';
import type { TypstRun } from '../text/typst.ts';

/** A finding that cannot wait, with what to do at once. */
export interface NowFinding {
  finding: TypstRun[];
  action: TypstRun[];
}

/** A region that is uncovered. */
export interface Uncovering {
  region: string;
  /** How far. */
  how: string;
  /** What stays covered meanwhile, and how it is covered again. */
  keep: string;
}

/** One step as it is printed: words alone, nothing left to work out. */
export interface SheetStep {
  /** Manoeuvre id, for messages. */
  id: string;
  /** From 1, over the whole sheet. */
  number: number;
  title: string;
  /** Minute in which it begins: "12 min". */
  minute: string;
  /** Time it takes, side, stage. */
  facts: string[];
  /** What is taken up for it. */
  instruments?: string;
  /** Regions to cover before anything else is uncovered. */
  cover?: string;
  /** Regions to uncover. */
  uncover: string[];
  /** Where to stand, when the examiner has to move. */
  stand?: string;
  /** What a sensitive examination asks for first. */
  sensitive?: string;
  /** The first caution; none at a later stage. */
  caution?: TypstRun[];
  now: NowFinding[];
  /** At a later stage, the number of the step whose caution and findings hold. */
  asAt?: number;
}

/** What is done in one position, with the change into it. */
export interface SheetBlock {
  /** Label of the position. */
  position: string;
  /** Its mark as SVG text. */
  mark: string;
  /** When it begins and how long it lasts. */
  when: string;
  /** Regions to cover before the patient moves. */
  cover?: string;
  /** Seconds of the change, in words; none for a position that the patient is in already. */
  move?: string;
  /** The words that bring the patient into it. */
  say: string;
  /** How the patient lies, sits or stands. */
  how: string;
  /** How to help, and what to look out for. */
  help: string;
  steps: SheetStep[];
}

/** A line of the strip along time; spans are in shares of the whole, from 0 to 1. */
export interface StripLine {
  label: string;
  /** Mark of a position; none for a region. */
  mark?: string;
  spans: [from: number, to: number][];
}

/** The whole examination along time. */
export interface SheetStrip {
  lines: StripLine[];
  /** Minutes to mark, with their place from 0 to 1. */
  minutes: { minute: number; at: number }[];
  /** What the drawing shows, for those who do not see it. */
  alt: string;
}

/** A printed run sheet: what every size of it is set from. */
export interface RunSheet {
  /** Form id. */
  id: string;
  title: string;
  purpose: string;
  leavesOut: string;
  /** Signs that must not be missed, most dangerous first. */
  mustNotMiss: string[];
  /** Time, positions and movements, in sentences. */
  inAll: string;
  /** What is proven, and what the same steps would take in other orders, in sentences. */
  compared: string;
  /** What to lay out, in the order of the vocabulary. */
  layOut: string[];
  strip: SheetStrip;
  blocks: SheetBlock[];
  /** Every region that is uncovered, in order of first use. */
  uncovering: Uncovering[];
  /** Regions to cover when all is done. */
  coverAtEnd?: string;
  /** What the sheet could not hold, with the reason. */
  leftOut: string[];
  /** Whose edition it is, and whom to call there; none of the shared library. */
  clinic?: { name: string; title: string; rows: ContactRow[]; checked: string };
  /** Form and its version, and version of the library. */
  edition: string;
  /** First eight digits of the SHA-256 of everything above but the edition: copies with one code say the same. */
  code: string;
}
