import type { PartName } from './parts.ts';

/** Heights of one card at one step of the ladder, in points; pairs are front and back. */
export interface StepHeights {
  /** Body size. */
  size: number;
  /** Height of a line. */
  line: number;
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

/** What the front may hold, best first: hands and words in front, findings behind. Safety comes before hands on every one. */
const fronts: readonly (readonly PartName[])[] = [
  ['flags', 'cautions', 'steps', 'say'],
  ['flags', 'cautions', 'steps'],
  ['flags', 'cautions', 'say'],
  ['flags', 'cautions', 'steps', 'say', 'normal'],
  ['flags', 'cautions'],
  ['flags'],
];

type Split = [front: PartName[], back: PartName[]];

const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);

/** How far the fuller face goes over its room; nothing or less when both hold. */
function overrun({ room }: Measured, step: StepHeights, faces: Split, names: readonly PartName[]): number {
  const needs = faces.map(
    (face, side) => (step.openings[side] ?? 0) + sum(face.map((name) => step.parts[names.indexOf(name)] ?? 0)),
  );
  return Math.max(...needs.map((need, side) => need - (room[side] ?? 0)));
}

const split = (names: readonly PartName[], front: readonly PartName[]): Split => [
  names.filter((name) => front.includes(name)),
  names.filter((name) => !front.includes(name)),
];

/** Ways to share parts between the faces; without findings, what to say has the back to itself first. */
const splitsOf = (names: readonly PartName[]): Split[] => {
  const [whole, handsOnly, ...rest] = fronts.map((front) => split(names, front)) as [Split, Split, ...Split[]];
  return names.includes('abnormal') ? [whole, handsOnly, ...rest] : [handsOnly, whole, ...rest];
};

/**
 * Sets a card as large as it goes with everything on it; when even the floor does not hold everything,
 * leaves out common errors, then the fields. `names` are the card's parts in the order measured.
 */
export function fitCard(measured: Measured, names: readonly PartName[]): Fit | Excess {
  for (let gone = 0; gone <= mayGo.length; gone += 1) {
    const leftOut = mayGo.slice(0, gone).filter((name) => names.includes(name));
    const kept = names.filter((name) => !leftOut.includes(name));
    const fit = largest(measured, kept, names);
    if (fit) return { ...fit, leftOut };
  }
  return { excess: leastExcess(measured, names) };
}

function largest(measured: Measured, kept: PartName[], names: readonly PartName[]): Omit<Fit, 'leftOut'> | undefined {
  for (const step of measured.steps.toReversed()) {
    const faces = splitsOf(kept).find((pair) => overrun(measured, step, pair, names) <= 0.01);
    if (faces) return { size: step.size, line: step.line, front: faces[0], back: faces[1] };
  }
  return undefined;
}

function leastExcess(measured: Measured, names: readonly PartName[]): number {
  const [floor] = measured.steps;
  if (!floor) throw new RangeError(`card "${measured.id}" was measured at no step`);
  const kept = names.filter((name) => !mayGo.includes(name));
  return Math.min(...splitsOf(kept).map((pair) => overrun(measured, floor, pair, names)));
}
