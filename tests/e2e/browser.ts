import { existsSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { findChromium } from '../../src/cli/find-chromium.ts';
import { builtExtension, type ExtensionBrowser, launchExtension } from '../../src/cli/launch-extension.ts';
import { type PageServer, servePages } from './page-server.ts';

/** A real Chromium with the built extension, and a server for the test pages. */
export interface TestBrowser extends ExtensionBrowser, Pick<PageServer, 'address' | 'serve'> {
  open(address: string): Promise<Page>;
}

/** `language` is that of the browser itself. */
export async function startBrowser(language?: string): Promise<TestBrowser> {
  if (!existsSync(builtExtension)) throw new Error('The extension is not built: run `npm run build` first.');
  const server = await servePages();
  const launched = await launchExtension({
    executable: findChromium(),
    headless: true,
    sealed: true,
    ...(language && { language }),
  });
  return {
    ...launched,
    address: server.address,
    serve: server.serve,
    open: async (address) => {
      const page = await launched.context.newPage();
      await page.goto(address);
      return page;
    },
    close: async () => {
      await launched.close();
      server.stop();
    },
  };
}
