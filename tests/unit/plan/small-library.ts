import type { Library } from '../../../schemas/library.ts';
import type { Manoeuvre } from '../../../schemas/manoeuvre.ts';
import { fixtureLibrary, fixtureManoeuvre } from '../../fixtures/library.ts';
import { present } from '../../fixtures/present.ts';

/** Positions of the planner's tests with the seconds of each change, as far apart as a sum of these steps. */
export type Changes = Record<string, Record<string, number>>;

/** Seated, lying and standing with plain round figures. */
export const threePositions: Changes = {
  sitting: { supine: 15, standing: 6 },
  supine: { sitting: 15, standing: 20 },
  standing: { sitting: 8, supine: 20 },
};

/** What a test says of a manoeuvre; the rest is filled in. */
export type Sketch = Pick<Manoeuvre, 'id'> & Partial<Manoeuvre>;

/** A library with these manoeuvres on one page, in this order, and these positions. */
export function libraryOf(sketches: readonly Sketch[], changes: Changes = threePositions): Library {
  const manoeuvres = sketches.map(manoeuvreOf);
  const [page] = fixtureLibrary.protocols;
  const [position] = fixtureLibrary.positions;
  const [instrument] = fixtureLibrary.instruments;
  const tools = new Set(manoeuvres.flatMap(({ instruments }) => instruments));
  return {
    ...fixtureLibrary,
    protocols: [{ ...present(page), id: 'page', system: 'page', manoeuvres }],
    positions: Object.entries(changes).map(([id, changeSeconds]) => ({
      ...present(position),
      id,
      label: id,
      changeSeconds,
    })),
    instruments: [...tools].map((id) => ({ ...present(instrument), id, label: id })),
    forms: [],
    priorities: [],
  };
}

function manoeuvreOf(sketch: Sketch): Manoeuvre {
  const bare = fixtureManoeuvre('wrist-look');
  return {
    ...bare,
    system: 'page',
    scope: 'screening',
    stages: [['sitting']],
    exposure: [],
    examiner: 'front',
    instruments: [],
    seconds: 30,
    sides: 'none',
    after: [],
    derivedAfter: [],
    ...sketch,
  };
}

/** Makes every change as short as its shortest detour, so that the triangle inequality holds. */
export function withDetours(changes: Changes): Changes {
  const ids = Object.keys(changes);
  const table = new Map(ids.map((id) => [id, new Map(Object.entries(present(changes[id])))]));
  const seconds = (from: string, to: string): number => (from === to ? 0 : present(table.get(from)?.get(to)));
  for (const by of ids)
    for (const from of ids)
      for (const to of ids)
        if (from !== to) table.get(from)?.set(to, Math.min(seconds(from, to), seconds(from, by) + seconds(by, to)));
  return Object.fromEntries(ids.map((id) => [id, Object.fromEntries(present(table.get(id)))]));
}

/** Seconds of one change of a table. */
export function changeIn(changes: Changes): (from: string, to: string) => number {
  return (from, to) => (from === to ? 0 : present(changes[from]?.[to]));
}
