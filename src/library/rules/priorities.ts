import type { Priority } from '../../../schemas/priority.ts';
import type { Content, Entry } from '../content.ts';
import type { At } from '../faults.ts';
import { manoeuvresOf, type Rule } from './rule.ts';

type Tell = (at: At, message: string) => void;

/** What is kept when there is too little time is said once for everything, and the preparation is always kept. */
export const priorities: Rule = {
  name: 'priority',
  description:
    'No manoeuvre and no scope stands on two rungs of content/vocabulary/priorities.yaml, every manoeuvre on one, and preparation on one that is always kept.',
  check(content, report) {
    const rungs = content.tables.priorities;
    reportTwice(rungs, 'manoeuvres', report);
    reportTwice(rungs, 'scopes', report);
    reportPreparation(content, report);
    reportUnranked(content, report);
  },
};

function reportTwice(rungs: readonly Entry<Priority>[], list: 'manoeuvres' | 'scopes', report: Tell): void {
  const first = new Map<string, string>();
  for (const { value, at } of rungs)
    value[list].forEach((id, index) => {
      const before = first.get(id);
      first.set(id, before ?? value.id);
      if (before === undefined) return;
      const noun = list === 'scopes' ? 'scope' : 'manoeuvre';
      report(at([list, index]), `The ${noun} "${id}" stands on the rung "${before}" already. Keep one.`);
    });
}

/** Clean hands, consent and the closing are never dropped for want of time. */
function reportPreparation(content: Content, report: Tell): void {
  const preparation = manoeuvresOf(content).flatMap(({ value }) => (value.scope === 'preparation' ? [value.id] : []));
  for (const { value, at } of content.tables.priorities.filter((rung) => rung.value.keep !== 'always')) {
    const advice = 'Preparation and closing are always kept; move it to a rung with "keep: always".';
    value.manoeuvres.forEach((id, index) => {
      if (preparation.includes(id)) report(at(['manoeuvres', index]), `"${id}" is preparation. ${advice}`);
    });
    const index = value.scopes.indexOf('preparation');
    if (index >= 0) report(at(['scopes', index]), `The scope "preparation" may be dropped here. ${advice}`);
  }
}

function reportUnranked(content: Content, report: Tell): void {
  const rungs = content.tables.priorities;
  const last = rungs.at(-1);
  if (last === undefined) return;
  const named = new Set(rungs.flatMap(({ value }) => value.manoeuvres));
  const scopes = new Set(rungs.flatMap(({ value }) => value.scopes));
  const missing = manoeuvresOf(content)
    .map(({ value }) => value)
    .filter(({ id, scope }) => !named.has(id) && !scopes.has(scope));
  for (const scope of new Set(missing.map((one) => one.scope))) {
    const ids = missing.filter((one) => one.scope === scope).map(({ id }) => id);
    report(
      last.at(),
      `No rung holds ${ids.join(', ')}, and none holds the scope "${scope}". Add the scope to a rung, for example to "${last.value.id}".`,
    );
  }
}
