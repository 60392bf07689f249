import { Worker } from 'node:worker_threads';
import type { PlanRequest } from '../../schemas/plan.ts';
import { requireLibrary } from '../../src/library/load.ts';
import { changeSecondsOf } from '../../src/plan/movements.ts';
import { planRequest } from '../../src/plan/plan.ts';
import { problemOf } from '../../src/plan/search/problem.ts';
import { solve } from '../../src/plan/search/solve.ts';
import { select } from '../../src/plan/select.ts';
import { stockRequest } from '../../src/plan/stock-request.ts';
import { programOf, slotsFor, stockModel, type Answer, type Model } from '../unit/plan/mixed-integer.ts';
import { randomCase, type Recipe } from '../unit/plan/random-cases.ts';
import { changeIn } from '../unit/plan/small-library.ts';

const usage = `node tests/bench/plan.ts [--seconds N] [--seeds N] [--only library|random]

Prints how long run sheets take: every examination and the whole library, then random cases of 50, 100 and 200 items
with the memory the planner's process holds and the gap between the order found and the proven bound. Beside each stands
what HiGHS, a solver of mixed-integer programs, makes of the same case. N seconds a case at most for each of the two, 5
by default; one seed of each kind of random case by default.`;

/** Random cases of ten positions, from those that are proven at once to those that are not proven in time. */
const recipes: Recipe[] = [50, 100, 200].flatMap((items) =>
  [0.5, 1, 2].map((orders) => ({ items, positions: 10, orders, alternatives: 3, staged: 0.04 })),
);

/** The word after an option. */
const given = (option: string): string | undefined =>
  process.argv.includes(option) ? process.argv[process.argv.indexOf(option) + 1] : undefined;

const seconds = Number(given('--seconds') ?? 5);
const seeds = Array.from({ length: Number(given('--seeds') ?? 1) }, (_, i) => i + 1);

/** What the planner made of a case. */
interface Row {
  name: string;
  found: number;
  bound: number;
  milliseconds: number;
  /** Resident memory of the process afterwards. */
  megabytes: number;
  /** The same case for the other solver; undefined where it is no case of positions alone. */
  model: Model | undefined;
}

function rowOf(name: string, model: Model | undefined, work: () => { found: number; bound: number }): Row {
  const begun = performance.now();
  const answer = work();
  const milliseconds = Math.round(performance.now() - begun);
  return { name, ...answer, milliseconds, megabytes: Math.round(process.memoryUsage().rss / 1e6), model };
}

function libraryRows(): Row[] {
  const library = requireLibrary('content');
  const change = changeSecondsOf(library);
  const whole = { manoeuvres: library.protocols.flatMap(({ manoeuvres }) => manoeuvres.map(({ id }) => id)) };
  const requests: [string, PlanRequest][] = [
    ...library.forms.map((form): [string, PlanRequest] => [form.id, stockRequest(form)]),
    ['whole library', whole],
    ['whole library in 20 minutes', { ...whole, minutes: 20 }],
  ];
  return requests.map(([name, request]) => {
    const { manoeuvres } = select(library, request);
    const model =
      request.minutes === undefined ? stockModel(library.positions, manoeuvres, change, request.start) : undefined;
    return rowOf(name, model, () => {
      const { totals, bound } = planRequest(library, request, { milliseconds: seconds * 1000 });
      return { found: totals.positionSeconds, bound: bound.positionSeconds };
    });
  });
}

function randomRow(recipe: Recipe, seed: number): Row {
  const { items, positions, changes } = randomCase(seed, recipe);
  const model: Model = { items, positions, change: changeIn(changes) };
  return rowOf(`random: ${recipe.items} items, ${recipe.orders} orders each, seed ${seed}`, model, () => {
    const begun = performance.now();
    const late = (share: number) => (): boolean => performance.now() - begun >= 1000 * seconds * share;
    const problem = problemOf(items, positions, model.change);
    const { seconds: found, bound } = solve(problem, late(0.85), late(1));
    return { found, bound };
  });
}

/** What the other solver says of a case: told how many seconds suffice, which the planner is not. */
async function otherText({ model, found }: Row): Promise<string> {
  if (model === undefined) return 'HiGHS: not asked';
  const slots = slotsFor(model, found);
  const begun = performance.now();
  const answer = await answerTo(programOf(model, slots));
  const time = `${Math.round(performance.now() - begun)} ms`;
  if (answer === undefined) return `HiGHS, ${slots} slots: no answer, stopped after ${time}`;
  const least = Number.isFinite(answer.seconds) ? `${answer.seconds} s` : 'no order';
  return `HiGHS, ${slots} slots: ${least}, ${answer.status}, ${time}`;
}

/** The solver looks at its clock seldom in large programs: it is stopped when it takes twice its time. */
function answerTo(program: string): Promise<Answer | undefined> {
  const worker = new Worker(new URL('program-worker.ts', import.meta.url), { workerData: { program, seconds } });
  return new Promise((resolve) => {
    const stop = setTimeout(() => resolve(undefined), 2000 * seconds);
    worker.once('message', (answer: Answer) => resolve(answer));
    worker.once('error', () => resolve(undefined));
    worker.once('exit', () => clearTimeout(stop));
  }).finally(() => worker.terminate()) as Promise<Answer | undefined>;
}

async function print(row: Row): Promise<void> {
  const { name, found, bound, milliseconds, megabytes } = row;
  const gap = bound === found ? 'proven' : `at least ${bound} s, gap ${((100 * (found - bound)) / found).toFixed(0)} %`;
  console.log(`${name}: ${found} s of changes, ${gap}, ${milliseconds} ms, ${megabytes} MB; ${await otherText(row)}`);
}

if (process.argv.includes('--help')) console.log(usage);
else {
  // The planner goes first through everything, so that its memory is its own.
  const rows: Row[] = [];
  if (given('--only') !== 'random') rows.push(...libraryRows());
  if (given('--only') !== 'library')
    rows.push(...recipes.flatMap((recipe) => seeds.map((seed) => randomRow(recipe, seed))));
  for (const row of rows) await print(row);
}
