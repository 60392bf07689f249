import type { Library } from '../../schemas/library.ts';
import type { Plan } from '../../schemas/plan.ts';
import { stripOf } from '../plan/strip.ts';
import { byId } from '../text/references.ts';
import type { Uncovering } from './run-sheet.ts';
import { set } from './words.ts';

/** How far each region of a sheet is uncovered, in order of first use. Throws for an id that the library does not hold. */
export function uncovering({ exposures }: Library, plan: Plan): Uncovering[] {
  return stripOf(plan)
    .regions.map(({ id }) => byId(exposures, id))
    .map(({ label, uncover, cover }) => ({ region: label, how: set(uncover), keep: set(cover) }));
}
