/**
 * Conversions between units of the bedside. Pure arithmetic, no rounding.
 * Definitions: UCUM Organization, Unified Code for Units of Measure, ucum-essence.xml v2.2 (2024-06-17).
 */

/** Kilopascals in one centimetre of water: UCUM m[H2O] = 9.80665 kPa. */
export const kilopascalsPerCmWater = 9.80665 / 100;

/** Kilopascals in one millimetre of mercury: UCUM m[Hg] = 133.3220 kPa. */
export const kilopascalsPerMmHg = 133.322 / 1000;

/** Centimetres in one inch: UCUM [in_i] = 2.54 cm, exact. */
export const centimetresPerInch = 2.54;

/** Inches in one foot: UCUM [ft_i] = 12 [in_i], exact. */
export const inchesPerFoot = 12;

/** Kilograms in one pound: UCUM [lb_av] = 7000 [gr] of 64.79891 mg, exact. */
export const kilogramsPerPound = (7000 * 64.79891) / 1_000_000;

/** Returns the pressure in mmHg of a column of water, in cmH2O. */
export const cmWaterToMmHg = (cmWater: number): number => (cmWater * kilopascalsPerCmWater) / kilopascalsPerMmHg;

/** Returns the pressure in cmH2O of a column of mercury, in mmHg. */
export const mmHgToCmWater = (mmHg: number): number => (mmHg * kilopascalsPerMmHg) / kilopascalsPerCmWater;

/** Returns a length in cm, from inches. */
export const inchesToCentimetres = (inches: number): number => inches * centimetresPerInch;

/** Returns a mass in kg, from pounds (avoirdupois). */
export const poundsToKilograms = (pounds: number): number => pounds * kilogramsPerPound;

/** Returns a temperature in °C, from °F. UCUM [degF] is 5 K/9, with its zero at −32 such degrees from that of Cel. */
export const fahrenheitToCelsius = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9;
