import type { Library } from '../../schemas/library.ts';
import type { Manoeuvre } from '../../schemas/manoeuvre.ts';
import type { PlanRequest } from '../../schemas/plan.ts';

/** Why a manoeuvre cannot be done for this patient in this room, in words; undefined when it can. */
export function reasonToLeaveOut(library: Library, request: PlanRequest, manoeuvre: Manoeuvre): string | undefined {
  return (
    withoutPosition(library, request, manoeuvre) ??
    withoutInstrument(library, request, manoeuvre) ??
    onAvoidedSide(request, manoeuvre)
  );
}

/**
 * Why a manoeuvre was left out for want of time, and what it would need.
 * @param needs least seconds of a sheet that holds it beside what comes before it
 * @param together what is not to be split, if it belongs to it
 */
export function doesNotFit(minutes: number, needs: number, together?: string): string {
  const given = `${minutes} ${minutes === 1 ? 'minute' : 'minutes'}`;
  const whole = together === undefined ? '' : `, where "${together}" is kept or left out as a whole`;
  return `does not fit in ${given}${whole}; beside what matters more it needs at least ${timeOf(needs)}`;
}

function timeOf(needs: number): string {
  const [minutes, seconds] = [Math.floor(Math.ceil(needs) / 60), Math.ceil(needs) % 60];
  return [minutes > 0 ? `${minutes} min` : '', seconds > 0 ? `${seconds} s` : '']
    .filter((part) => part !== '')
    .join(' ');
}

function withoutPosition(
  { positions }: Library,
  { cannot = [] }: PlanRequest,
  { stages }: Manoeuvre,
): string | undefined {
  const stage = stages.find((alternatives) => alternatives.every((id) => cannot.includes(id)));
  if (stage === undefined) return undefined;
  return stage.length === 1
    ? `needs a position that this patient cannot take: ${labelsOf(positions, stage)}`
    : `needs one of these positions, and this patient can take none of them: ${labelsOf(positions, stage)}`;
}

function withoutInstrument(
  { instruments }: Library,
  { without = [] }: PlanRequest,
  manoeuvre: Manoeuvre,
): string | undefined {
  const missing = manoeuvre.instruments.filter((id) => without.includes(id));
  return missing.length === 0 ? undefined : `needs what is missing: ${labelsOf(instruments, missing)}`;
}

function onAvoidedSide({ avoidSides = [] }: PlanRequest, { sides }: Manoeuvre): string | undefined {
  if (sides === 'none') return undefined;
  if (sides !== 'both') return avoidSides.includes(sides) ? `is done on the ${sides}, a side to avoid` : undefined;
  const neither = avoidSides.includes('left') && avoidSides.includes('right');
  return neither ? 'is done on the left and the right, both to be avoided' : undefined;
}

const labelsOf = (entries: readonly { id: string; label: string }[], ids: readonly string[]): string =>
  ids.map((id) => entries.find((entry) => entry.id === id)?.label ?? id).join('; ');
