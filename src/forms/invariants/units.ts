import { extensionUrls } from '../extension-urls.ts';
import { codeSystems } from '../code-systems.ts';
import { ucumFault } from '../ucum.ts';
import { itemInvariant, shown } from './invariant.ts';

/** Units are valid UCUM codes, named as such, with words to show. */
export const units = itemInvariant('units', 'Units are UCUM.', ({ extension = [] }) =>
  extension
    .filter(({ url }) => url === extensionUrls.unit)
    .flatMap(({ valueCoding: { system, code, display } = {} }) => [
      ...(system === codeSystems.ucum ? [] : [`found the unit system ${shown(system)}, expected ${codeSystems.ucum}`]),
      ...(display?.trim() ? [] : ['found a unit without display, expected the unit as shown']),
      ...ucumFault(code ?? ''),
    ]),
);
