import { extensionUrls } from '../extension-urls.ts';
import { itemInvariant } from './invariant.ts';

/** The smallest number accepted is below the largest. */
export const ranges = itemInvariant('ranges', 'A range has room in it.', ({ extension = [] }) => {
  const limit = (url: string): number | undefined => extension.find((each) => each.url === url)?.valueDecimal;
  const min = limit(extensionUrls.min);
  const max = limit(extensionUrls.max);
  if (min === undefined || max === undefined || min < max) return [];
  return [`found the range ${min} to ${max}, expected the first number below the second`];
});
