import type { Plan, PlanStep } from '../../schemas/plan.ts';
import { exposureKey } from './exposure.ts';
import { atPace } from './movements.ts';
import type { Timing } from './steps.ts';

/** Examiner place that is no place: it never asks for a move. */
export const anywhere = 'anywhere';

/** What the steps add up to. */
export function totalsOf(steps: readonly PlanStep[], { change, pace, start }: Timing): Plan['totals'] {
  const positions = [...(start === undefined ? [] : [start]), ...steps.map(({ position }) => position)];
  const moved = sum(changes(positions).map(([from, to]) => change(from, to)));
  const positionSeconds = atPace(moved, pace);
  return {
    seconds: atPace(sum(steps.map(({ seconds }) => seconds)) + positionSeconds),
    positionChanges: changes(positions).length,
    positionSeconds,
    exposureChanges: changes(steps.map(({ exposure }) => exposureKey(exposure))).length,
    examinerMoves: changes(steps.map(({ examiner }) => examiner).filter((place) => place !== anywhere)).length,
  };
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);

/** The neighbours in a list that differ. */
function changes(list: readonly string[]): [string, string][] {
  return list.slice(1).flatMap((to, i) => {
    const from = list[i] ?? to;
    return from === to ? [] : [[from, to] as [string, string]];
  });
}
