import { isReady } from '../search/moves.ts';
import { has, within, type Words } from '../search/sets.ts';
import { isOnly, type Tasks } from './tasks.ts';

/** What a stretch of steps in one visit stands for: one exposure, one place of the examiner. */
export interface Station {
  visit: number;
  exposure: number;
  place: number;
}

/** A set among many in one array: the items done. */
export interface Done {
  set: Words;
  at: number;
}

/** Whether nothing more can be done in the visit with what is uncovered. */
export const isClosed = ({ here, problem }: Tasks, visit: number, exposure: number, { set, at }: Done): boolean =>
  !here[visit]![exposure]!.some((item) => isReady(problem, item, set, at));

/**
 * Whether a run that uncovers something else, without a move of the examiner, can be made now without loss, when nothing
 * more can be done with what is uncovered: it leaves nothing of its exposure to be done in this visit, must be made in
 * this visit anyway, and what it uncovers cannot be kept for what follows the visit. Taken out of any order and put in
 * front it adds no change.
 * @param before what is done before the run, and after it
 */
export function isLossless(tasks: Tasks, run: Station, before: Done, after: Done): boolean {
  const { visit, exposure } = run;
  if (!tasks.here[visit]![exposure]!.every((item) => has(after.set, after.at, item))) return false;
  if (canBeKept(tasks, run, after)) return false;
  return mustBeHere(tasks, run, before) || (isAllDone(tasks, exposure, after) && mustStay(tasks, visit, before));
}

/** Whether what a run uncovers may stay uncovered for something after its visit. */
function canBeKept(tasks: Tasks, run: Station, after: Done): boolean {
  const { visit, exposure } = run;
  for (let v = visit; v < tasks.visits.length; v++) {
    const bridge = tasks.visits[v]!.bridge;
    if (v > visit && !tasks.here[v]![exposure]!.every((item) => has(after.set, after.at, item))) return true;
    if (v > visit && mustUncoverOther(tasks, run, v, after)) return false;
    if (bridge !== undefined) return tasks.exposure[bridge.item] === exposure;
  }
  return false;
}

const isOpen = ({ problem }: Tasks, items: Words, { set, at }: Done): boolean =>
  !within(items, 0, set, at, problem.words);

/** Whether something of another exposure must be done in a later visit, which no other from here on can serve. */
const mustUncoverOther = (tasks: Tasks, { visit, exposure }: Station, later: number, done: Done): boolean =>
  tasks.exposures.of.some(
    (marks, key) =>
      key !== exposure && marks.some(({ visits, set }) => isOnly(visits, visit, later) && isOpen(tasks, set, done)),
  );

/** Whether this visit alone can serve an open item of the exposure. */
const mustBeHere = (tasks: Tasks, { visit, exposure }: Station, before: Done): boolean =>
  tasks.exposures.of[exposure]!.some(({ visits, set }) => isOnly(visits, visit, visit) && isOpen(tasks, set, before));

/** Whether nothing of the exposure is left for any visit. */
const isAllDone = (tasks: Tasks, exposure: number, after: Done): boolean =>
  tasks.exposures.of[exposure]!.every(({ set }) => !isOpen(tasks, set, after));

const mustStay = (tasks: Tasks, visit: number, before: Done): boolean => isOpen(tasks, tasks.due[visit]!, before);
