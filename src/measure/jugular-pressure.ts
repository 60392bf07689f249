/**
 * Right atrial pressure as the neck veins show it: the height of the venous column above the sternal angle, plus the
 * distance from the sternal angle down to the right atrium. The distance grows when the trunk is raised
 * (Seth and others, J Gen Intern Med 2002;17:861–865), which the usual 5 cm leaves out.
 */
import type { Library } from '../../schemas/library.ts';
import { cmWaterToMmHg } from './units.ts';

/** A distance from the sternal angle down to the middle of the right atrium. */
export interface AtrialOffset {
  /** When it holds, in words: "supine", "at 30°". */
  at: string;
  /** Vertical centimetres. */
  cm: number;
}

/** An estimate of right atrial pressure; a centimetre of blood is taken as a centimetre of water. */
export interface PressureEstimate {
  /** Total height above the right atrium, in cmH2O. */
  cmWater: number;
  /** The same in mmHg. */
  mmHg: number;
}

/**
 * Returns the estimated right atrial pressure, unrounded, from the vertical height of the venous column above the
 * sternal angle (cm; negative below it) and the distance from the angle to the atrium (cm, above 0).
 * Throws RangeError for anything else.
 */
export function estimatePressure(heightCm: number, offsetCm: number): PressureEstimate {
  if (!Number.isFinite(heightCm)) throw new RangeError(`the height is ${heightCm}; expected a number of centimetres`);
  if (!(Number.isFinite(offsetCm) && offsetCm > 0)) {
    throw new RangeError(`the distance to the atrium is ${offsetCm}; expected centimetres above 0`);
  }
  const cmWater = heightCm + offsetCm;
  return { cmWater, mmHg: cmWaterToMmHg(cmWater) };
}

/** Returns the measured distances, from the library's value `sternal-angle-to-atrium`. Throws RangeError if it is not a series. */
export function measuredOffsets({ values }: Pick<Library, 'values'>): AtrialOffset[] {
  const value = values.find(({ id }) => id === 'sternal-angle-to-atrium');
  if (value?.kind !== 'series') throw new RangeError('the value "sternal-angle-to-atrium" is not a series');
  return value.points.map(({ at, value: cm }) => ({ at, cm }));
}

/** Returns the taught distance, from the library's value `sternal-angle-to-atrium-taught`. Throws RangeError if it is not a number. */
export function taughtOffset({ values }: Pick<Library, 'values'>): AtrialOffset {
  const value = values.find(({ id }) => id === 'sternal-angle-to-atrium-taught');
  if (value?.kind !== 'number') throw new RangeError('the value "sternal-angle-to-atrium-taught" is not a number');
  return { at: 'as taught', cm: value.value };
}

/** One line of the table: a height and its estimate at each distance. */
export interface PressureRow {
  /** Height above the sternal angle in cm. */
  height: number;
  estimates: PressureEstimate[];
}

/** Returns a line for every whole centimetre from `low` to `high`, with an estimate for each distance. */
export function pressureTable(low: number, high: number, offsets: readonly AtrialOffset[]): PressureRow[] {
  const heights = Array.from({ length: high - low + 1 }, (_, i) => low + i);
  return heights.map((height) => ({ height, estimates: offsets.map(({ cm }) => estimatePressure(height, cm)) }));
}
