import type { Library } from '../../schemas/library.ts';
import type { PlanRequest } from '../../schemas/plan.ts';
import { manoeuvresOf } from '../plan/manoeuvres-of.ts';
import { stockRequest } from '../plan/stock-request.ts';

/**
 * What the planner is asked for what was chosen: a stock examination begins where it says unless the patient is
 * somewhere else, and everything else gets its preparation and closing.
 */
export function fullRequest(library: Library, chosen: PlanRequest): PlanRequest {
  const form = library.forms.find(({ id }) => id === chosen.form);
  if (form !== undefined) return { ...stockRequest(form), ...chosen };
  const preparation = manoeuvresOf(library, { scopes: ['preparation'], manoeuvres: [] });
  const { systems, ...rest } = chosen;
  const ofSystems = library.protocols
    .filter(({ system }) => systems?.includes(system))
    .flatMap(({ manoeuvres }) => manoeuvres.map(({ id }) => id));
  return { ...rest, manoeuvres: [...new Set([...preparation, ...ofSystems, ...(chosen.manoeuvres ?? [])])] };
}

/** The heading of a sheet for what was chosen. */
export function titleOf(library: Library, { form, systems, manoeuvres }: PlanRequest): string {
  const found = library.forms.find(({ id }) => id === form);
  if (found !== undefined) return found.title;
  const titles = library.protocols.filter(({ system }) => systems?.includes(system)).map(({ title }) => title);
  if (titles.length > 0) return titles.length > 3 ? `${titles.length} systems` : titles.join('; ');
  return manoeuvres?.length === 1 ? '1 manoeuvre' : `${manoeuvres?.length ?? 0} manoeuvres`;
}

/** What was asked beside the examination itself, for the head of a sheet, in a line; empty when nothing was. */
export function askedText(library: Library, request: PlanRequest): string {
  const labels = (entries: readonly { id: string; label: string }[], ids: readonly string[] = []): string =>
    entries
      .filter(({ id }) => ids.includes(id))
      .map(({ label }) => label)
      .join(', ');
  const titles = library.protocols
    .flatMap(({ manoeuvres }) => manoeuvres)
    .filter(({ id }) => request.last?.includes(id))
    .map(({ title }) => title);
  const parts: [string, string | number | undefined][] = [
    ['Patient at first', labels(library.positions, request.start === undefined ? [] : [request.start])],
    ['Minutes', request.minutes],
    ['Missing', labels(library.instruments, request.without)],
    ['Cannot be', labels(library.positions, request.cannot)],
    ['Left for last where the order allows', titles.join(', ')],
    ['Sides avoided', request.avoidSides?.join(', ')],
    ['Moving takes', request.pace === undefined ? undefined : `${request.pace} times an able adult’s`],
  ];
  return parts
    .filter(([, value]) => value !== undefined && value !== '')
    .map(([name, value]) => `${name}: ${value}.`)
    .join(' ');
}
