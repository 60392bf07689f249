import type { Library } from '../../schemas/library.ts';
import type { Protocol } from '../../schemas/protocol.ts';
import type { System } from '../../schemas/vocabulary.ts';

const regionWords: Record<System['region'], string> = {
  whole: 'The whole patient',
  head: 'Head',
  'neck-and-chest': 'Neck and chest',
  abdomen: 'Abdomen',
  'limbs-and-back': 'Limbs and back',
  nerves: 'Nerves',
};

/** Protocols of one region of the body, in order of examination. */
export interface Region {
  label: string;
  protocols: Protocol[];
}

/** Returns the regions from head to toe with the protocols that exist; a region without one is left out. */
export function regionsOf({ protocols, systems }: Pick<Library, 'protocols' | 'systems'>): Region[] {
  const regionOf = new Map(systems.map(({ id, region }) => [id, region]));
  return Object.entries(regionWords)
    .map(([region, label]) => ({ label, protocols: protocols.filter(({ system }) => regionOf.get(system) === region) }))
    .filter((region) => region.protocols.length > 0);
}
