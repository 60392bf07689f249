import { requireLibrary } from '../../src/library/load.ts';
import { planRequest } from '../../src/plan/plan.ts';
import { problemOf } from '../../src/plan/search/problem.ts';
import { solve } from '../../src/plan/search/solve.ts';
import { stockRequest } from '../../src/plan/stock-request.ts';
import { randomCase, type Recipe } from '../unit/plan/random-cases.ts';
import { changeIn } from '../unit/plan/small-library.ts';

const usage = `node tests/bench/plan.ts [--seconds N]

Prints how long run sheets take: every examination and the whole library, then random cases of 50, 100 and 200 items
with the gap between the order found and the proven bound. N seconds a case at most, 5 by default.`;

/** Random cases of ten positions, from those that are proven at once to those that are not proven in time. */
const recipes: Recipe[] = [50, 100, 200].flatMap((items) =>
  [0.5, 1, 2].map((orders) => ({ items, positions: 10, orders, alternatives: 3, staged: 0.04 })),
);
const seeds = [1, 2, 3];

const text = process.argv[process.argv.indexOf('--seconds') + 1];
const milliseconds = 1000 * (process.argv.includes('--seconds') ? Number(text) : 5);
const megabytes = (): string => `${Math.round(process.memoryUsage().rss / 1e6)} MB`;

function timed<T>(work: () => T): [T, string] {
  const begun = performance.now();
  const result = work();
  return [result, `${(performance.now() - begun).toFixed(0)} ms`];
}

function benchLibrary(): void {
  const library = requireLibrary('content');
  const whole = { manoeuvres: library.protocols.flatMap(({ manoeuvres }) => manoeuvres.map(({ id }) => id)) };
  const requests = [...library.forms.map(stockRequest), whole, { ...whole, minutes: 20 }];
  for (const request of requests) {
    const [{ totals, steps, optimal }, time] = timed(() => planRequest(library, request, { milliseconds }));
    const name = 'form' in request ? request.form : `whole library${'minutes' in request ? ' in 20 minutes' : ''}`;
    const proof = optimal.positionSeconds ? 'proven' : 'not proven';
    console.log(`${name}: ${steps.length} steps, ${totals.positionSeconds} s of changes, ${proof}, ${time}`);
  }
}

function benchRandom(recipe: Recipe, seed: number): void {
  const { items, positions, changes } = randomCase(seed, recipe);
  const problem = problemOf(items, positions, changeIn(changes));
  const begun = performance.now();
  const late = (share: number) => (): boolean => performance.now() - begun >= milliseconds * share;
  const [{ seconds, bound }, time] = timed(() => solve(problem, late(0.85), late(1)));
  const gap =
    bound === seconds ? 'proven' : `at least ${bound} s, gap ${((100 * (seconds - bound)) / seconds).toFixed(0)} %`;
  console.log(
    `${recipe.items} items, ${recipe.orders} orders each, seed ${seed}: ${seconds} s, ${gap}, ${time}, ${megabytes()}`,
  );
}

if (process.argv.includes('--help')) console.log(usage);
else {
  benchLibrary();
  for (const recipe of recipes) for (const seed of seeds) benchRandom(recipe, seed);
}
