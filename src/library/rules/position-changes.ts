import type { Position } from '../../../schemas/vocabulary.ts';
import type { Entry } from '../content.ts';
import { didYouMean } from '../suggest.ts';
import type { Rule } from './rule.ts';

/** The seconds for changing position make a sound table. */
export const positionChanges: Rule = {
  name: 'position-changes',
  description:
    'changeSeconds names every other position, and no detour is quicker than the direct change (the planner relies on both).',
  check({ tables: { positions } }, report) {
    const ids = positions.map((entry) => entry.value.id);
    for (const entry of positions) {
      const { id, changeSeconds } = entry.value;
      const missing = ids.filter((to) => to !== id && changeSeconds[to] === undefined);
      if (missing.length > 0)
        report(
          entry.at(['changeSeconds']),
          `changeSeconds of "${id}" lacks ${missing.join(', ')}. Give whole seconds to every other position.`,
        );
      for (const to of Object.keys(changeSeconds).filter((key) => !ids.includes(key) || key === id)) {
        report(
          entry.at(['changeSeconds', to]),
          to === id
            ? `changeSeconds of "${id}" names itself. Leave it out; staying takes no time.`
            : `position "${to}" is not known.${didYouMean(to, ids)} Positions are listed in content/vocabulary/positions.yaml.`,
        );
      }
      reportDetours(entry, positions, report);
    }
  },
};

function reportDetours(
  from: Entry<Position>,
  positions: readonly Entry<Position>[],
  report: Parameters<Rule['check']>[1],
): void {
  for (const [to, direct] of Object.entries(from.value.changeSeconds)) {
    for (const { value: via } of positions) {
      const first = from.value.changeSeconds[via.id];
      const second = via.changeSeconds[to];
      if (first === undefined || second === undefined || via.id === to || first + second >= direct) continue;
      report(
        from.at(['changeSeconds', to]),
        `From "${from.value.id}" to "${to}" takes ${direct} s, but by way of "${via.id}" only ${first + second} s. Lower it to at most ${first + second}, or raise the others.`,
      );
    }
  }
}
