import type { Evidence } from '../../schemas/evidence.ts';
import type { Value } from '../../schemas/value.ts';
import { figures } from '../text/evidence-text.ts';
import { quantityText, rangeText } from '../text/numbers.ts';
import { byId } from '../text/references.ts';
import { figureText } from '../text/value-text.ts';

/** One of the figures that stand side by side where sources disagree. */
export interface FigureColumn {
  figure: string;
  /** Source id. */
  source: string;
  where: string;
  /** What differs, or whom it applies to. */
  note?: string | undefined;
  /** True for the figure that the pages use. */
  used: boolean;
}

/** Returns the figures of a value and of the sources that disagree, the one in use first; none when nobody disagrees. */
export function valueColumns(value: Value): FigureColumn[] {
  if (value.others.length === 0) return [];
  const own = {
    figure: figureText(value),
    source: value.source,
    where: value.where,
    note: value.appliesTo,
    used: true,
  };
  const others = value.others.map(({ value: other, source, where, note }) => ({
    figure: typeof other === 'number' ? quantityText(other, value.unit) : rangeText(other.low, other.high, value.unit),
    source,
    where,
    note,
    used: false,
  }));
  return [own, ...others];
}

/** Returns the likelihood ratios of entries that disagree, in the order given; none is preferred. */
export function evidenceColumns(entries: readonly Evidence[]): FigureColumn[] {
  return entries.map((entry) => ({
    figure: figures(entry),
    source: entry.source,
    where: entry.where,
    note: `${entry.condition}. ${entry.population}`,
    used: false,
  }));
}

/**
 * Groups evidence ids that disagree with one another, directly or through a third, each id once and in the order given.
 * An entry with which none disagrees stands alone.
 */
export function evidenceGroups(ids: readonly string[], all: readonly Evidence[]): Evidence[][] {
  const groups: Evidence[][] = [];
  for (const id of ids) {
    if (groups.flat().some((entry) => entry.id === id)) continue;
    groups.push(connected(id, all));
  }
  return groups;
}

function connected(start: string, all: readonly Evidence[]): Evidence[] {
  const found = [byId(all, start)];
  for (const entry of found) {
    const near = all.filter(
      (other) => entry.disagreesWith.includes(other.id) || other.disagreesWith.includes(entry.id),
    );
    found.push(...near.filter((other) => !found.includes(other)));
  }
  return found;
}
