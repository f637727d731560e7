import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { fileURLToPath } from 'node:url';
import { chromium, type Page } from 'playwright-core';
import { build, type Rollup } from 'vite';
import { findChromium } from '../src/tools/find-browser.ts';

declare global {
  var wordreachBench: typeof import('./in-page/index.ts');
  var engine: import('./in-page/whole-engine.ts').WholeEngine;
}

/** A real Chromium whose pages have `in-page` as `wordreachBench`, and an opened engine as `engine`. */
export interface BenchBrowser {
  open(html: string): Promise<Page>;
  close(): Promise<void>;
}

export async function startBenchBrowser(): Promise<BenchBrowser> {
  const code = (await bundle('index.ts')).replace('var wordreachBench', 'globalThis.wordreachBench');
  const judge = await bundle('judge-worker.ts');
  const table = readFileSync(new URL('../public/data/lexicon.bin', import.meta.url));
  const sequence: unknown = JSON.parse(
    readFileSync(new URL('../profiles/sequences/steady-steps.json', import.meta.url), 'utf8'),
  );
  let html = '';
  const server = createServer(({ url }, response) => {
    if (url === '/table') response.end(table);
    else if (url === '/judge.js') response.setHeader('content-type', 'text/javascript').end(judge);
    else response.setHeader('content-type', 'text/html; charset=utf-8').end(html);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const browser = await chromium.launch({
    executablePath: findChromium(),
    args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
  });
  return {
    async open(content) {
      html = content;
      const page = await browser.newPage({ viewport: { width: 1200, height: 900 } });
      await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
      await page.evaluate(code);
      await page.evaluate(async (given) => {
        const bytes = await (await fetch('/table')).arrayBuffer();
        globalThis.engine = wordreachBench.openEngine(new Uint8Array(bytes), given, '/judge.js');
        // The page's own first drawing is not measured.
        for (let i = 0; i < 3; i++) await new Promise((rested) => requestIdleCallback(rested));
      }, sequence);
      return page;
    },
    async close() {
      await browser.close();
      server.close();
    },
  };
}

async function bundle(script: string): Promise<string> {
  const entry = fileURLToPath(new URL(`in-page/${script}`, import.meta.url));
  const built = (await build({
    configFile: false,
    logLevel: 'silent',
    publicDir: false,
    // A package of the engine checks `typeof require` to know that it is bundled.
    define: { 'typeof require': '"function"' },
    build: {
      write: false,

      lib: { entry, formats: ['iife'], name: 'wordreachBench' },
    },
  })) as Rollup.RollupOutput[];
  return built[0]!.output[0].code;
}
