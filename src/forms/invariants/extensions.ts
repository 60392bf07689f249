import type { Extension, QuestionnaireItem } from '@medplum/fhirtypes';
import { extensionUrls } from '../extension-urls.ts';
import { itemInvariant } from './invariant.ts';

/** The extensions that a form may carry, and the value that each holds. */
const allowed = new Map<string, string>([
  [extensionUrls.unit, 'valueCoding'],
  [extensionUrls.min, 'valueDecimal'],
  [extensionUrls.max, 'valueDecimal'],
]);

/** Decimals carry a unit and both limits, once each; nothing carries any other extension. */
export const extensions = itemInvariant(
  'extensions',
  'Only known extensions, of the right type, where they mean something.',
  (item) => [
    ...(item.extension ?? []).flatMap((extension) => extensionFaults(extension, item)),
    ...[...allowed.keys()].flatMap((url) => countFaults(url, item)),
  ],
);

function extensionFaults(extension: Extension, { type }: QuestionnaireItem): string[] {
  const expected = allowed.get(extension.url);
  if (expected === undefined)
    return [`found the extension "${extension.url}", expected one of ${[...allowed.keys()].join(', ')}`];
  if (type !== 'decimal')
    return [`found the extension "${extension.url}" on a "${type}" item, expected it on "decimal" alone`];
  return expected in extension ? [] : [`found "${extension.url}" without ${expected}, expected ${expected}`];
}

function countFaults(url: string, { type, extension = [] }: QuestionnaireItem): string[] {
  const count = extension.filter((each) => each.url === url).length;
  return type === 'decimal' && count !== 1 ? [`found "${url}" ${count} times, expected it once`] : [];
}
