import type { PlanStep } from '../../schemas/plan.ts';
import { atPace } from './movements.ts';
import type { ChangeSeconds } from './search/problem.ts';
import type { Allowed } from './select.ts';

/** A manoeuvre in its place, with the position of each stage. */
export interface Turn {
  manoeuvre: Allowed;
  positions: string[];
}

/** How time passes between steps. */
export interface Timing {
  change: ChangeSeconds;
  pace: number | undefined;
  /** Position at the start. */
  start: string | undefined;
}

/** The steps with the seconds at which they begin. */
export function stepsOf(turns: readonly Turn[], { change, pace, start }: Timing): PlanStep[] {
  let moved = 0;
  let worked = 0;
  let position = start;
  return turns.flatMap(({ manoeuvre, positions }) =>
    shares(manoeuvre.seconds, positions.length).map((seconds, stage) => {
      const to = positions[stage] ?? '';
      moved += position === undefined ? 0 : change(position, to);
      position = to;
      const step = stepOf(manoeuvre, stage + 1, to, worked + atPace(moved, pace), seconds);
      worked += seconds;
      return step;
    }),
  );
}

function stepOf(
  { id, exposure, examiner, instruments, onlySide }: Allowed,
  stage: number,
  position: string,
  start: number,
  seconds: number,
): PlanStep {
  const side = onlySide === undefined ? {} : { side: onlySide };
  return { manoeuvre: id, stage, position, exposure, examiner, instruments, start: atPace(start), seconds, ...side };
}

/** Whole seconds for each stage that add up to the whole, the longer ones first. */
function shares(seconds: number, stages: number): number[] {
  const least = Math.floor(seconds / stages);
  const more = seconds - least * stages;
  return Array.from({ length: stages }, (_, stage) => least + (stage < more ? 1 : 0));
}
