import { indexFiles } from '../search/index-files.ts';
import type { FilterName } from '../search/record.ts';
import { searchRecords } from '../search/records.ts';
import { library } from './_data.ts';

/** Every page that look-up knows, made once for the whole build. */
export const records = searchRecords(library);

let files: ReturnType<typeof indexFiles> | undefined;

/** Files of the search index by path, made once for the whole build. */
export function searchFiles(): ReturnType<typeof indexFiles> {
  files ??= indexFiles(records);
  return files;
}

/** Values of a filter that some page has, in the order of the records; positions in the order of the vocabulary. */
export function filterValues(name: FilterName): string[] {
  const used = new Set(records.flatMap(({ filters }) => filters[name] ?? []));
  if (name !== 'position') return [...used];
  return library.positions.map(({ label }) => label).filter((label) => used.has(label));
}
