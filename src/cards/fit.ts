import type { PartName } from './parts.ts';
import { splitsOf, type Split } from './split.ts';

/** Heights of one card at one step of the ladder, in points; pairs are front and back. */
export interface StepHeights {
  /** Body size. */
  size: number;
  /** Height of a line. */
  line: number;
  /** Width of the cut in per cent: 100, or 75 for the condensed one. */
  stretch: number;
  /** Title, and on the front the strip. */
  openings: [front: number, back: number];
  /** Height of each part, in reading order. */
  parts: number[];
}

/** What the typesetter measured of one card; steps go from the floor upwards. */
export interface Measured {
  id: string;
  /** Height there is on each face between head and foot. */
  room: [front: number, back: number];
  steps: StepHeights[];
}

/** How a card is set: size, and which parts stand on which face. */
export interface Fit {
  size: number;
  line: number;
  stretch: number;
  front: PartName[];
  back: PartName[];
  /** Whole parts that found no room; never a part that keeps the patient safe. */
  leftOut: PartName[];
}

/** By how much a card fails at the floor, in points, after everything that may be left out is. */
export interface Excess {
  excess: number;
}

/** What may be left out, in this order, when a card does not hold everything: the page still says it. */
export const mayGo: readonly PartName[] = ['errors', 'record'];

const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);

/** How far the fuller face goes over its room; nothing or less when both hold. */
function overrun({ room }: Measured, step: StepHeights, faces: Split, names: readonly PartName[]): number {
  const needs = faces.map(
    (face, side) => (step.openings[side] ?? 0) + sum(face.map((name) => step.parts[names.indexOf(name)] ?? 0)),
  );
  return Math.max(...needs.map((need, side) => need - (room[side] ?? 0)));
}

/** Above this size, in points, a face reads well enough for the order of its parts to count for more. */
const comfortable = 8;

type Setting = Omit<Fit, 'leftOut'>;

/** Every way to set the kept parts so that both faces hold, best first. */
function settings(measured: Measured, kept: PartName[], names: readonly PartName[]): Setting[] {
  const fits = splitsOf(kept).flatMap((pair, rank) =>
    measured.steps
      .filter((step) => overrun(measured, step, pair, names) <= 0.01)
      .map(({ size, line, stretch }) => ({ rank, setting: { size, line, stretch, front: pair[0], back: pair[1] } })),
  );
  const worth = ({ size }: Setting) => Math.min(size, comfortable);
  return fits
    .sort((a, b) => worth(b.setting) - worth(a.setting) || a.rank - b.rank || b.setting.line - a.setting.line)
    .map(({ setting }) => setting);
}

/** Sets of parts to try, fullest first. */
const keeps = (names: readonly PartName[]): { kept: PartName[]; leftOut: PartName[] }[] =>
  [0, ...mayGo.keys()].map((_, gone) => {
    const leftOut = mayGo.slice(0, gone).filter((name) => names.includes(name));
    return { leftOut, kept: names.filter((name) => !leftOut.includes(name)) };
  });

/**
 * Sets a card as large as it goes with everything on it; when even the floor does not hold everything, leaves out
 * common errors, then the fields. `names` are the card's parts in the order measured.
 */
export function fitCard(measured: Measured, names: readonly PartName[]): Fit | Excess {
  for (const { kept, leftOut } of keeps(names)) {
    const [best] = settings(measured, kept, names);
    if (best) return { ...best, leftOut };
  }
  return { excess: leastExcess(measured, names) };
}

/** Excess at the first step measured, the floor. */
function leastExcess(measured: Measured, names: readonly PartName[]): number {
  const [floor] = measured.steps;
  if (!floor) throw new RangeError(`card "${measured.id}" was measured at no step`);
  const kept = names.filter((name) => !mayGo.includes(name));
  return Math.min(...splitsOf(kept).map((pair) => overrun(measured, floor, pair, names)));
}
