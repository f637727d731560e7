import { existsSync, readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const pages = fileURLToPath(new URL('../pages', import.meta.url));
const TYPES: Readonly<Record<string, string>> = {
  '.svg': 'image/svg+xml',
  '.css': 'text/css',
  '.pdf': 'application/pdf',
};

/** Serves the test pages from this computer. */
export interface PageServer {
  /** Returns the address of a file in tests/pages. */
  address(page: string): string;
  /** Adds a page or file made by the test, and returns its address. */
  serve(name: string, content: string | Uint8Array): string;
  stop(): void;
}

export async function servePages(): Promise<PageServer> {
  const made = new Map<string, string | Uint8Array>();
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
    const given = made.get(path);
    const file = join(pages, path);
    if (given === undefined && (path.includes('..') || !existsSync(file) || path === '/')) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { 'content-type': TYPES[extname(path)] ?? 'text/html; charset=utf-8' });
    response.end(given ?? readFileSync(file));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const base = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  return {
    address: (page) => `${base}/${page}`,
    serve: (name, content) => {
      made.set(`/${name}`, content);
      return `${base}/${name}`;
    },
    stop: () => {
      server.close();
    },
  };
}
