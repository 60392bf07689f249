import { close, createIndex } from 'pagefind';
import type { SearchRecord } from './record.ts';
import { recordHtml } from './record-html.ts';

/** What a page needs to look something up; Pagefind's own interfaces (400 KB) are left out. */
const needed =
  /^(pagefind\.js|pagefind-worker\.js|pagefind-entry\.json|pagefind\..*\.pf_meta|wasm\.en\.pagefind|(index|fragment|filter)\/.*)$/;

/**
 * Files of the search index by path below `/pagefind/`: the same bytes for the same records.
 * Throws when Pagefind refuses a record.
 */
export async function indexFiles(records: readonly SearchRecord[]): Promise<Map<string, Uint8Array<ArrayBuffer>>> {
  const { index, errors } = await createIndex({ forceLanguage: 'en' });
  if (index === undefined) throw new Error(`The search index could not be started: ${errors.join('; ')}`);
  try {
    // One after the other: the order of arrival numbers the pages.
    for (const [order, record] of records.entries()) {
      const added = await index.addHTMLFile({ url: record.url, content: recordHtml(record, order) });
      if (added.errors.length > 0) throw new Error(`The index refuses ${record.url}: ${added.errors.join('; ')}`);
    }
    const written = await index.getFiles();
    if (written.errors.length > 0) throw new Error(`The index could not be written: ${written.errors.join('; ')}`);
    return new Map(
      written.files
        .filter(({ path }) => needed.test(path))
        .map(({ path, content }): [string, Uint8Array<ArrayBuffer>] => [path, new Uint8Array(content)])
        .sort(([a], [b]) => (a < b ? -1 : 1)),
    );
  } finally {
    await close();
  }
}
