import type { CardFit } from '../../cards/fitted-set.ts';
import type { CardFormat, CardSize } from '../../cards/formats.ts';
import type { Paper } from '../../forms/paper/sheet.ts';

/** What one run of a worker sets: every size of a card set, which share their fitting, or a form on one paper. */
export type Job = { kind: 'cards'; set: string } | { kind: 'form'; form: string; paper: Paper };

/** A card set in every size, and how its cards were fitted in both formats. */
export interface PressedCards {
  files: Record<CardSize, Uint8Array<ArrayBuffer>>;
  fits: Record<CardFormat, CardFit[]>;
}
