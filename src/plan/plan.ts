import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import type { Plan, PlanRequest } from '../../schemas/plan.ts';
import { arrange } from './arrange/arrange.ts';
import type { Placed } from './arrange/runs.ts';
import type { Traits } from './arrange/tasks.ts';
import { exposureKey } from './exposure.ts';
import { leaveForLast } from './leave-for-last.ts';
import { fitting } from './minutes.ts';
import { atPace, changeSecondsOf } from './movements.ts';
import { doesNotFit } from './reasons.ts';
import { problemOf, type ChangeSeconds, type PlanItem, type Problem } from './search/problem.ts';
import { solve } from './search/solve.ts';
import { select } from './select.ts';
import { stepsOf, type Turn } from './steps.ts';
import { stopwatch, type PlanOptions, type Stopwatch } from './stopwatch.ts';
import { anywhere, totalsOf } from './totals.ts';

/** What one run of the planner works with. */
interface Run {
  request: PlanRequest;
  positions: string[];
  change: ChangeSeconds;
  watch: Stopwatch;
}

/** Shares of the time: for trying what fits and what can wait, for the proof, for a good order without one. */
const shares = { trials: 0.5, proof: 0.85, all: 1 };

/**
 * The run sheet of a request: every order kept, least seconds of position changes (proven unless time runs out), then
 * little uncovering, few moves of the examiner, page order.
 * @param request as `checkRequest` gives it; ids that the library does not hold are passed over
 */
export function planRequest(library: Library, request: PlanRequest, options: PlanOptions = {}): Plan {
  const positions = library.positions.map(({ id }) => id);
  const run: Run = { request, positions, change: changeSecondsOf(library), watch: stopwatch(options) };
  const selected = select(library, request);
  const manoeuvres = withinMinutes(run, selected.manoeuvres);
  const problem = problemFor(run, leaveForLast(manoeuvres.map(itemOf), request.last ?? [], trialSeconds(run)));
  const { path, seconds, bound } = solve(problem, run.watch(shares.proof), run.watch(shares.all));
  const turns = turnsOf(problem, manoeuvres, arrange(problem, path, manoeuvres.map(traitsOf)));
  const timing = { change: run.change, pace: request.pace, start: request.start };
  const steps = stepsOf(turns, timing);
  return {
    steps,
    leftOut: [...selected.leftOut, ...dropped(request, selected.manoeuvres, manoeuvres)],
    layOut: toLayOut(library, manoeuvres),
    totals: totalsOf(steps, timing),
    optimal: { positionSeconds: seconds === bound },
    bound: { positionSeconds: atPace(bound, request.pace) },
  };
}

const itemOf = ({ id, stages, after, derivedAfter }: Manoeuvre): PlanItem => ({
  id,
  stages,
  after: [...after, ...derivedAfter],
});

const traitsOf = ({ exposure, examiner, instruments }: Manoeuvre): Traits => ({
  exposure: exposureKey(exposure),
  place: examiner === anywhere ? undefined : examiner,
  tools: [...instruments].sort().join(' '),
});

const problemFor = ({ positions, change, request }: Run, items: readonly PlanItem[]): Problem =>
  problemOf(items, positions, change, request.start);

/** Least seconds of position changes of some items, or close to it when time is short. */
const trialSeconds =
  (run: Run) =>
  (items: readonly PlanItem[]): number =>
    solve(problemFor(run, items), run.watch(shares.trials), run.watch(shares.trials)).seconds;

function withinMinutes(run: Run, manoeuvres: Manoeuvre[]): Manoeuvre[] {
  const { minutes, pace } = run.request;
  if (minutes === undefined) return manoeuvres;
  const movements = (some: readonly Manoeuvre[]): number => atPace(trialSeconds(run)(some.map(itemOf)), pace);
  return fitting(manoeuvres, minutes * 60, movements);
}

function dropped({ minutes }: PlanRequest, all: readonly Manoeuvre[], kept: readonly Manoeuvre[]): Plan['leftOut'] {
  if (minutes === undefined) return [];
  return all.filter((one) => !kept.includes(one)).map(({ id }) => ({ manoeuvre: id, reason: doesNotFit(minutes) }));
}

function toLayOut({ instruments }: Library, manoeuvres: readonly Manoeuvre[]): string[] {
  const used = new Set(manoeuvres.flatMap((one) => one.instruments));
  return instruments.map(({ id }) => id).filter((id) => used.has(id));
}

function turnsOf(problem: Problem, manoeuvres: readonly Manoeuvre[], placed: readonly Placed[]): Turn[] {
  return placed.flatMap(({ item, positions }) => {
    const manoeuvre = manoeuvres[item];
    const ids = positions.map((position) => problem.positions[position] ?? '');
    return manoeuvre === undefined ? [] : [{ manoeuvre, positions: ids }];
  });
}
