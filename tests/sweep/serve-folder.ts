import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
};

/** Serves a folder of saved pages on this machine. Returns the address of its root and a way to stop the server. */
export async function serveFolder(folder: string): Promise<{ readonly root: string; stop(): void }> {
  const server = createServer(async (request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
    // Imitates a server that never answers, like the servers of some adverts.
    if (path.startsWith('/hangs')) return;
    const bytes = path.includes('..') ? null : await readFile(join(folder, path)).catch(() => null);
    const type = TYPES[extname(path)] ?? 'application/octet-stream';
    if (bytes) response.writeHead(200, { 'content-type': type }).end(bytes);
    else response.writeHead(404).end();
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    root: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    stop: () => {
      server.closeAllConnections();
      server.close();
    },
  };
}
