import type { Urgency } from '../../schemas/common.ts';
import type { Line } from '../../schemas/inline.ts';

/** Red flags of one urgency, in the order of the page. */
export interface FlagGroup {
  urgency: Urgency;
  /** "Now: stop and act". */
  words: string;
  flags: { finding: Line; action: Line }[];
}

/** One labelled fact of the strip under the title. */
export interface StripRow {
  label: 'Position' | 'Examiner' | 'Uncover' | 'Lay out';
  text: string;
}

/** What one pocket card says, before it is set: the page and every PDF are made from this value. */
export interface Card {
  /** Manoeuvre id. */
  id: string;
  /** System that holds the manoeuvre. */
  system: string;
  title: string;
  /** Title of the set. */
  set: string;
  /** Place in the set, from 1. */
  number: number;
  /** How many cards the set has. */
  count: number;
  /** Positions for the thumb index: ids of the first stage's alternatives and of later stages, or `any`. */
  marks: string[];
  strip: StripRow[];
  /** Most urgent first. Never left out. */
  redFlags: FlagGroup[];
  /** Never left out. */
  cautions: Line[];
  /** The short lines written for the card, or else the whole technique. */
  steps: Line[];
  say: Line[];
  normal: Line[];
  abnormal: Line[];
  errors: Line[];
  /** What to write down, one entry a field. */
  record: string[];
  /** The clinic whose edition it is of; printed where the foot has room. */
  owner?: string;
  /** Library version and the first eight digits of its hash: "v0.1.0 · 3f9c2a1b". */
  edition: string;
  /** Who reviewed the page and when: "Review: second reader, 25 Nov 2026". */
  review: string;
}
