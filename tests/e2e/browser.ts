import { existsSync, readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { findChromium } from '../../src/cli/find-chromium.ts';
import { builtExtension, type ExtensionBrowser, launchExtension } from '../../src/cli/launch-extension.ts';

const pages = fileURLToPath(new URL('../pages', import.meta.url));
const TYPES: Readonly<Record<string, string>> = { '.svg': 'image/svg+xml', '.css': 'text/css' };

/** A real Chromium with the built extension, and a server for the test pages. */
export interface TestBrowser extends ExtensionBrowser {
  /** Address of a file in tests/pages. */
  address(page: string): string;
  /** Address of a page made by the test. */
  serve(name: string, html: string): string;
  open(address: string): Promise<Page>;
}

export async function startBrowser(): Promise<TestBrowser> {
  if (!existsSync(builtExtension)) throw new Error('The extension is not built: run `npm run build` first.');
  const made = new Map<string, string>();
  const server = await startServer(made);
  const base = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  const launched = await launchExtension({ executable: findChromium(), headless: true, sealed: true });
  return {
    ...launched,
    address: (page) => `${base}/${page}`,
    serve: (name, html) => {
      made.set(`/${name}`, html);
      return `${base}/${name}`;
    },
    open: async (address) => {
      const page = await launched.context.newPage();
      await page.goto(address);
      return page;
    },
    close: async () => {
      await launched.close();
      server.close();
    },
  };
}

function startServer(made: ReadonlyMap<string, string>): Promise<Server> {
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
  return new Promise((resolve) => server.listen(0, '127.0.0.1', () => resolve(server)));
}
