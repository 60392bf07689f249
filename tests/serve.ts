import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.pdf': 'application/pdf',
  '.docx': 'application/vnd.openxmlformats-officedocument.wordprocessingml.document',
  '.zip': 'application/zip',
  '.txt': 'text/plain; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
};

/** A folder served on a free port of this machine. */
export interface Served {
  /** Address of the site's root, base path included, ending in a slash. */
  url: string;
  close(): Promise<void>;
}

/** Serves a built site below a base path, as a plain static host does: folders by their index page, 404.html for what is not there. */
export async function serveFolder(folder: string, base: string): Promise<Served> {
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
    const file = path.startsWith(base) ? fileFor(folder, path.slice(base.length)) : undefined;
    const missing = join(folder, '404.html');
    response.writeHead(file === undefined ? 404 : 200, {
      'content-type': types[extname(file ?? missing)] ?? 'application/octet-stream',
    });
    response.end(readFileSync(file ?? missing));
  });
  await new Promise<void>((resolve) => void server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return { url: `http://127.0.0.1:${String(port)}${base}`, close: () => close(server) };
}

function fileFor(folder: string, path: string): string | undefined {
  const whole = join(folder, normalize(`/${path}`));
  const file = existsSync(whole) && statSync(whole).isDirectory() ? join(whole, 'index.html') : whole;
  return existsSync(file) ? file : undefined;
}

function close(server: Server): Promise<void> {
  server.closeAllConnections();
  return new Promise((resolve, reject) => server.close((error) => (error ? reject(error) : resolve())));
}
