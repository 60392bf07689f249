import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { SearchIndex } from '../src/search/search-index.ts';

/** A search index that can be asked, with its own script running in Node, and a way to let it go. */
export interface OpenIndex {
  index: SearchIndex;
  close(): void;
}

/**
 * Serves the files of a search index from memory below a base path and opens it with its options untouched, as a page
 * would, but for the worker, which Node has not.
 */
export async function openIndexFiles(files: ReadonlyMap<string, Uint8Array>, base = '/'): Promise<OpenIndex> {
  const folder = mkdtempSync(join(tmpdir(), 'search-index-'));
  writeFileSync(join(folder, 'pagefind.mjs'), files.get('pagefind.js') ?? '');
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const file = files.get(pathname.slice(`${base}pagefind/`.length));
    response.writeHead(file === undefined ? 404 : 200).end(file);
  });
  await new Promise<void>((resolve) => void server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  const script = (await import(/* @vite-ignore */ pathToFileURL(join(folder, 'pagefind.mjs')).href)) as SearchIndex & {
    options(options: object): Promise<void>;
    init(): Promise<void>;
  };
  await script.options({ basePath: `http://127.0.0.1:${String(port)}${base}pagefind/`, noWorker: true });
  await script.init();
  const close = (): void => {
    server.closeAllConnections();
    server.close();
    rmSync(folder, { recursive: true });
  };
  return { index: script, close };
}
