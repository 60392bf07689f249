import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import type { Plan, PlanRequest } from '../../schemas/plan.ts';
import { inPageOrder, manoeuvresOf } from './manoeuvres-of.ts';
import { reasonToLeaveOut } from './reasons.ts';

/** A manoeuvre as this patient can have it. */
export interface Allowed extends Manoeuvre {
  /** The side that is done of one that is done on both, where the other is to be avoided. */
  onlySide?: 'left' | 'right';
}

/** What goes on the sheet, in page order, and what the patient or the room does not allow. */
export interface Selected {
  manoeuvres: Allowed[];
  leftOut: Plan['leftOut'];
}

/** The manoeuvres that a request names, in page order, without the positions that cannot be taken and sides to avoid. */
export function select(library: Library, request: PlanRequest): Selected {
  const wanted = new Set(wantedIds(library, request));
  const selected: Selected = { manoeuvres: [], leftOut: [] };
  for (const manoeuvre of inPageOrder(library).filter(({ id }) => wanted.has(id))) {
    const reason = reasonToLeaveOut(library, request, manoeuvre);
    if (reason === undefined) selected.manoeuvres.push(allowed(manoeuvre, request));
    else selected.leftOut.push({ manoeuvre: manoeuvre.id, reason });
  }
  return selected;
}

function wantedIds(library: Library, { form, manoeuvres, systems }: PlanRequest): string[] {
  if (manoeuvres !== undefined) return manoeuvres;
  const definition = library.forms.find(({ id }) => id === form);
  if (definition !== undefined) return manoeuvresOf(library, definition);
  return library.protocols
    .filter(({ system }) => systems?.includes(system))
    .flatMap((protocol) => protocol.manoeuvres.map(({ id }) => id));
}

/**
 * What is done on both sides keeps its seconds when one is to be avoided: the words, the setting out and the waits are not
 * halved, and what is left cannot be told apart. The sheet never promises too little.
 */
function allowed(manoeuvre: Manoeuvre, { cannot = [], avoidSides = [] }: PlanRequest): Allowed {
  const stages = manoeuvre.stages.map((stage) => stage.filter((position) => !cannot.includes(position)));
  const [avoided] = manoeuvre.sides === 'both' ? avoidSides : [];
  return {
    ...manoeuvre,
    stages,
    ...(avoided === undefined ? {} : { onlySide: avoided === 'left' ? 'right' : 'left' }),
  };
}
