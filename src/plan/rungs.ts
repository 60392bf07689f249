import type { Scope } from '../../schemas/common.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import type { Priority } from '../../schemas/priority.ts';

/** Manoeuvres that are kept or left out together. */
export interface Group {
  manoeuvres: Manoeuvre[];
  /** Kept however little time there is. */
  isAlways: boolean;
  /** What the group is, where it is not to be split. */
  title?: string;
}

const everyScope: Scope[] = ['preparation', 'intake', 'screening', 'complete', 'extended'];

/** What is kept first where the content does not say: the preparation always, then by scope, in page order. */
const byScope: Pick<Priority, 'title' | 'keep' | 'manoeuvres' | 'scopes'>[] = [
  { title: 'Opening and closing', keep: 'always', manoeuvres: [], scopes: ['preparation'] },
  { title: 'Screening', keep: 'each', manoeuvres: [], scopes: ['intake', 'screening'] },
  { title: 'Complete', keep: 'each', manoeuvres: [], scopes: ['complete'] },
  { title: 'Extended', keep: 'each', manoeuvres: [], scopes: ['extended'] },
];

/**
 * The manoeuvres of a sheet in groups, those to be kept first first.
 * @param manoeuvres in page order
 * @param priorities rungs of the content; what stands on none comes last, each by itself
 */
export function groupsOf(manoeuvres: readonly Manoeuvre[], priorities: readonly Priority[]): Group[] {
  const rungs = priorities.length > 0 ? priorities : byScope;
  const named = new Set(rungs.flatMap((rung) => rung.manoeuvres));
  const given = new Set(rungs.flatMap(({ scopes }) => scopes));
  const rest = {
    title: '',
    keep: 'each' as const,
    manoeuvres: [],
    scopes: everyScope.filter((one) => !given.has(one)),
  };
  const byId = new Map(manoeuvres.map((one) => [one.id, one]));
  return [...rungs, rest].flatMap((rung) => {
    const own = rung.manoeuvres.flatMap((id) => byId.get(id) ?? []);
    const others = manoeuvres.filter(({ id, scope }) => !named.has(id) && rung.scopes.includes(scope));
    return groupsOn(rung, [...own, ...others]);
  });
}

function groupsOn({ title, keep }: Pick<Priority, 'title' | 'keep'>, manoeuvres: Manoeuvre[]): Group[] {
  if (manoeuvres.length === 0) return [];
  if (keep === 'each') return manoeuvres.map((one) => ({ manoeuvres: [one], isAlways: false }));
  const isWhole = keep === 'together' && manoeuvres.length > 1;
  return [{ manoeuvres, isAlways: keep === 'always', ...(isWhole ? { title } : {}) }];
}
