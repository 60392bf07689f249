import { sheetOf, type Sheet } from '../../components/run-sheet.ts';
import { library } from '../_data.ts';

/** The run sheet of every stock examination, made once for the whole build: whole examinations first, shorter before longer. */
export const sheets: Sheet[] = library.forms
  .map((form) => sheetOf(library, form))
  .toSorted((a, b) => rank(a) - rank(b) || a.plan.totals.seconds - b.plan.totals.seconds);

function rank({ form }: Sheet): number {
  return form.scopes.length > 0 ? 0 : 1;
}
