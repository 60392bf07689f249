import { describe, expect, it } from 'vitest';
import { requireLibrary } from '../../../src/library/load.ts';
import { changeSecondsOf } from '../../../src/plan/movements.ts';
import { planRequest } from '../../../src/plan/plan.ts';
import { problemOf } from '../../../src/plan/search/problem.ts';
import { solve } from '../../../src/plan/search/solve.ts';
import { select } from '../../../src/plan/select.ts';
import { stockRequest } from '../../../src/plan/stock-request.ts';
import { present } from '../../fixtures/present.ts';
import { leastByProgram, slotsFor, stockModel, type Model } from './mixed-integer.ts';
import { randomCase } from './random-cases.ts';
import { changeIn } from './small-library.ts';

const never = (): boolean => false;

/** Examinations whose program is solved in well under a second; the others are in tests/bench/plan.ts. */
const quick = ['intake', 'bed-bound', 'breathless', 'confused', 'diabetic-foot-and-leg'];

describe('the least seconds of position changes are those of a mixed-integer program solved by HiGHS', () => {
  const library = requireLibrary('content');

  it.each(quick)('for the stock examination %s', (id) => {
    const request = stockRequest(present(library.forms.find((one) => one.id === id)));
    const { totals } = planRequest(library, request);
    const model = stockModel(
      library.positions,
      select(library, request).manoeuvres,
      changeSecondsOf(library),
      request.start,
    );
    expect(leastByProgram(model, totals.positionSeconds)).toEqual({
      status: 'Optimal',
      seconds: totals.positionSeconds,
    });
  });

  it('for random cases with stages, orders and alternatives', () => {
    let solved = 0;
    for (let seed = 0; seed < 60; seed++) {
      const recipe = { items: 6, positions: 3, orders: 0.8, alternatives: 2, staged: 0.2 };
      const { items, positions, changes } = randomCase(seed, recipe);
      const start = seed % 2 === 0 ? positions[0] : undefined;
      const model: Model = { items, positions, change: changeIn(changes), start };
      const { seconds } = solve(problemOf(items, positions, model.change, start), never, never);
      if (slotsFor(model, seconds) > 8) continue;
      solved++;
      expect({ seed, ...leastByProgram(model, seconds) }).toEqual({ seed, status: 'Optimal', seconds });
    }
    expect(solved).toBeGreaterThan(15);
  });

  it('and a program that is asked for less than the least finds nothing', () => {
    const { items, positions, changes } = randomCase(3, {
      ...{ items: 6, positions: 3, orders: 0.8, alternatives: 1, staged: 0 },
    });
    const model: Model = { items, positions, change: changeIn(changes) };
    const { seconds } = solve(problemOf(items, positions, model.change), never, never);
    expect(seconds).toBeGreaterThan(0);
    expect(leastByProgram(model, 0).status).toBe('Infeasible');
  });
});
