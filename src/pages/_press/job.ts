import type { CardFit } from '../../cards/fitted-set.ts';
import type { CardFormat, CardSize } from '../../cards/formats.ts';
import type { Form } from '../../../schemas/form.ts';
import type { Paper, Print } from '../../forms/paper/sheet.ts';
import type { SheetPaper } from '../../sheets/papers.ts';

/**
 * What one run of a worker sets: every size of a card set, which share their fitting; a form on one paper or in large print; its observation
 * sheets on one paper; the run sheet of a stock exam in every size, which share its plan.
 */
export type Job =
  | { kind: 'cards'; set: string }
  | { kind: 'form'; form: Form; print: Print }
  | { kind: 'watch'; form: Form; paper: Paper }
  | { kind: 'sheets'; form: string };

/** A card set in every size, and how its cards were fitted in both formats. */
export interface PressedCards {
  files: Record<CardSize, Uint8Array<ArrayBuffer>>;
  fits: Record<CardFormat, CardFit[]>;
}

/** A run sheet in every size. */
export type PressedSheets = Record<SheetPaper, Uint8Array<ArrayBuffer>>;
