import type { Library } from '../../../schemas/library.ts';
import type { Manoeuvre } from '../../../schemas/manoeuvre.ts';
import { fixtureLibrary, fixtureManoeuvre } from '../../fixtures/library.ts';

/** The small library with other manoeuvres on its page of the wrist. */
export function libraryWith(manoeuvres: Manoeuvre[]): Library {
  return {
    ...fixtureLibrary,
    protocols: fixtureLibrary.protocols.map((one) => (one.system === 'wrist' ? { ...one, manoeuvres } : one)),
  };
}

/** `count` manoeuvres that differ by id and title: "Look at the wrists, way 1". */
export function manyManoeuvres(count: number): Manoeuvre[] {
  const manoeuvre = fixtureManoeuvre('wrist-look');
  return Array.from({ length: count }, (_, place) => ({
    ...manoeuvre,
    id: `look-${place + 1}`,
    title: `Look, way ${place + 1}.`,
  }));
}
