import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import type { Plan, PlanRequest } from '../../schemas/plan.ts';
import { arrange } from './arrange/arrange.ts';
import type { Placed } from './arrange/runs.ts';
import type { Traits } from './arrange/tasks.ts';
import { exposureKey } from './exposure.ts';
import { leaveForLast, type IsFree } from './leave-for-last.ts';
import { fitting, type Fitting, type Needed } from './minutes.ts';
import { atPace, changeSecondsOf } from './movements.ts';
import { doesNotFit } from './reasons.ts';
import { problemOf, type ChangeSeconds, type PlanItem, type Problem } from './search/problem.ts';
import { groupsOf } from './rungs.ts';
import { replay } from './search/replay.ts';
import { allOf, equal } from './search/sets.ts';
import { pathWithin, solve, type Solution } from './search/solve.ts';
import { select, type Allowed } from './select.ts';
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
 * least uncovering, fewest moves of the examiner (each proven where it can be), few changes of instrument, page order.
 * @param request as `checkRequest` gives it; ids that the library does not hold are passed over
 */
export function planRequest(library: Library, request: PlanRequest, options: PlanOptions = {}): Plan {
  const positions = library.positions.map(({ id }) => id);
  const run: Run = { request, positions, change: changeSecondsOf(library), watch: stopwatch(options) };
  const selected = select(library, request);
  const fitted = withinMinutes(library, run, selected.manoeuvres);
  const manoeuvres: Allowed[] = fitted?.kept ?? selected.manoeuvres;
  const items = manoeuvres.map(itemOf);
  const { last = [] } = request;
  const problem = problemFor(run, last.length > 0 ? leaveForLast(items, last, isFreeFor(run, items)) : items);
  const { path, seconds, bound } = solve(problem, run.watch(shares.proof), run.watch(shares.all));
  const { placed, proven } = arrange(problem, path, manoeuvres.map(traitsOf));
  const timing = { change: run.change, pace: request.pace, start: request.start };
  const steps = stepsOf(turnsOf(problem, manoeuvres, placed), timing);
  return {
    steps,
    leftOut: [...selected.leftOut, ...dropped(request, selected.manoeuvres, fitted)],
    layOut: toLayOut(library, manoeuvres),
    totals: totalsOf(steps, timing),
    optimal: {
      positionSeconds: seconds === bound,
      exposureChanges: proven.exposures,
      examinerMoves: proven.moves,
      ...(fitted === undefined ? {} : { kept: fitted.isProven }),
    },
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

/** Position changes of some items at their least, or close to it when time is short. */
const trial = (run: Run, items: readonly PlanItem[]): Solution =>
  solve(problemFor(run, items), run.watch(shares.trials), run.watch(shares.trials));

/** Tells of orders added to items, as many as before in the same sequence, whether they cost nothing. */
function isFreeFor(run: Run, items: readonly PlanItem[]): IsFree {
  const first = trial(run, items);
  let path = first.path;
  return (some) => {
    const problem = problemFor(run, some);
    // Mostly the path at hand serves, and nothing need be searched.
    const next = serves(problem, path) ? path : pathWithin(problem, first.seconds, run.watch(shares.trials));
    path = next ?? path;
    return next !== undefined;
  };
}

/** Whether everything can be done along a path. */
const serves = (problem: Problem, path: Solution['path']): boolean =>
  equal(replay(problem, path, (item) => item).done, 0, allOf(problem.count), 0, problem.words);

function withinMinutes({ priorities }: Library, run: Run, manoeuvres: Allowed[]): Fitting | undefined {
  const { minutes, pace } = run.request;
  if (minutes === undefined) return undefined;
  const needed = (some: readonly Manoeuvre[]): Needed => {
    const work = some.reduce((sum, one) => sum + one.seconds, 0);
    const { seconds, bound } = trial(run, some.map(itemOf));
    return { seconds: work + atPace(seconds, pace), bound: work + atPace(bound, pace) };
  };
  return fitting(manoeuvres, groupsOf(manoeuvres, priorities), minutes * 60, needed);
}

/** What did not fit, in page order. */
function dropped({ minutes = 0 }: PlanRequest, all: readonly Allowed[], fitted: Fitting | undefined): Plan['leftOut'] {
  const reasons = new Map(
    (fitted?.dropped ?? []).flatMap(({ group, needs }) =>
      group.manoeuvres.map(({ id }) => [id, doesNotFit(minutes, needs, group.title)] as const),
    ),
  );
  return all.flatMap(({ id }) => {
    const reason = reasons.get(id);
    return reason === undefined ? [] : [{ manoeuvre: id, reason }];
  });
}

function toLayOut({ instruments }: Library, manoeuvres: readonly Manoeuvre[]): string[] {
  const used = new Set(manoeuvres.flatMap((one) => one.instruments));
  return instruments.map(({ id }) => id).filter((id) => used.has(id));
}

function turnsOf(problem: Problem, manoeuvres: readonly Allowed[], placed: readonly Placed[]): Turn[] {
  return placed.flatMap(({ item, positions }) => {
    const manoeuvre = manoeuvres[item];
    const ids = positions.map((position) => problem.positions[position] ?? '');
    return manoeuvre === undefined ? [] : [{ manoeuvre, positions: ids }];
  });
}
