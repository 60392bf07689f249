import type { Move } from '../search/moves.ts';
import type { Problem } from '../search/problem.ts';
import { fewest } from './fewest.ts';
import { promising } from './promising.ts';
import { changesIn, exposureUnit, movesIn, placedOf, placeUnit, type Draft, type Placed } from './runs.ts';
import { tasksOf, type Tasks, type Traits } from './tasks.ts';
import { visitsOf } from './visits.ts';

/** Items in the order of the sheet. */
export interface Arrangement {
  placed: Placed[];
  /** Changes of exposure, and moves of the examiner. */
  exposures: number;
  moves: number;
  /** Whether no order along the same walk has fewer changes of exposure; and, with as few, fewer moves. */
  proven: { exposures: boolean; moves: boolean };
}

/** How many drafts of equal length are kept, and how many states a proof may go through. Not time: the same for all. */
const effort = { width: 8, exposures: 150, moves: 600 };

/**
 * Puts the items in order within the visits of a path: as little uncovering and covering again as can be, then as few
 * moves of the examiner, few changes of instrument, then page order. All orders are kept. The first two are proven where
 * a search of bounded length can; the others are as good as a search that keeps the most promising drafts finds them.
 * @param traits of each item, in page order
 */
export function arrange(problem: Problem, path: readonly Move[], traits: readonly Traits[]): Arrangement {
  const tasks = tasksOf(problem, traits, visitsOf(path));
  const first = promising(tasks, effort.width, Infinity);
  if (first === undefined) throw new Error('no arrangement was found');
  const { draft, isProven: exposures } = fewest(tasks, { exposures: changesIn(first.cost) }, effort.exposures);
  const second = improved(tasks, first, draft);
  if (!exposures) return arrangementOf(second, { exposures, moves: false });
  const beat = { exposures: changesIn(second.cost), moves: movesIn(second.cost) };
  const { draft: third, isProven: moves } = fewest(tasks, beat, effort.moves);
  return arrangementOf(improved(tasks, second, third), { exposures, moves });
}

/** A sheet with as few changes and moves as a better draft that a proof came upon, its later steps in better order. */
function improved(tasks: Tasks, draft: Draft, better: Draft | undefined): Draft {
  if (better === undefined) return draft;
  const least = changesIn(better.cost) * exposureUnit + movesIn(better.cost) * placeUnit;
  const again = promising(tasks, effort.width, least + placeUnit);
  return again !== undefined && again.cost < better.cost ? again : better;
}

const arrangementOf = (draft: Draft, proven: Arrangement['proven']): Arrangement => ({
  placed: placedOf(draft),
  exposures: changesIn(draft.cost),
  moves: movesIn(draft.cost),
  proven,
});
