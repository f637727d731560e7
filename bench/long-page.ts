import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Page } from 'playwright-core';
import { findChromium } from '../src/tools/find-browser.ts';
import { launchExtension } from '../src/tools/launch-extension.ts';
import { untilRead } from './until-read.ts';

/** The number of words on the page. No task of the main thread may take 50 ms on this page. */
const WORDS = 100_000;

/**
 * Shades a page of 100,000 words in a real Chromium. Returns the longest task of its main thread, in milliseconds,
 * while shading and while removing the shading. 0 if no task took 50 ms.
 */
export async function measureLongPage(): Promise<{
  longest: number;
  stopping: number;
  marked: number;
  total: number;
  same: boolean;
}> {
  const html = longPage();
  const server = createServer((_request, response) =>
    response.setHeader('content-type', 'text/html; charset=utf-8').end(html),
  );
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const browser = await launchExtension({ executable: findChromium(), headless: true, sealed: true });
  const page = await browser.context.newPage();
  await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
  const before = await page.evaluate(() => document.documentElement.outerHTML);
  await page.evaluate(() => {
    const holder = window as unknown as { tasks: number[] };
    holder.tasks = [];
    new PerformanceObserver((list) =>
      holder.tasks.push(...list.getEntries().map(({ duration }) => duration)),
    ).observe({ entryTypes: ['longtask'] });
  });
  // The page's own first drawing takes tasks too. Counting begins when the page has come to rest.
  await page.evaluate(async () => {
    for (let i = 0; i < 3; i++) await new Promise((rested) => requestIdleCallback(rested));
    (window as unknown as { tasks: number[] }).tasks.length = 0;
  });
  const started = performance.now();
  await browser.press(page);
  await page.waitForFunction(() => document.adoptedStyleSheets.length > 0);
  await untilRead(page, browser.context.serviceWorkers()[0]!);
  const marked = await page.evaluate(() => CSS.highlights.get('wr-1')?.size ?? 0);
  const total = performance.now() - started;
  const tasks = await page.evaluate(() => (window as unknown as { tasks: number[] }).tasks.splice(0));
  await browser.press(page);
  await page.waitForFunction(() => document.adoptedStyleSheets.length === 0);
  const same = (await page.evaluate(() => document.documentElement.outerHTML)) === before;
  const stopping = await page.evaluate(() => (window as unknown as { tasks: number[] }).tasks.splice(0));
  const seen = await seesLongTasks(page);
  await browser.close();
  server.close();
  if (!seen) throw new Error('The browser reports no long tasks, so the figure would mean nothing.');
  return { longest: Math.max(0, ...tasks), stopping: Math.max(0, ...stopping), marked, total, same };
}

/** Blocks the page on purpose, to check that a long task would be noticed. */
async function seesLongTasks(page: Page): Promise<boolean> {
  await page.evaluate(() => {
    setTimeout(() => {
      for (const until = performance.now() + 90; performance.now() < until; );
    });
  });
  const seen = () => (window as unknown as { tasks: number[] }).tasks.some((duration) => duration >= 80);
  return page.waitForFunction(seen, null, { timeout: 5000 }).then(
    () => true,
    () => false,
  );
}

function longPage(): string {
  const article = readFileSync(new URL('../tests/pages/article.html', import.meta.url), 'utf8');
  const text = article.replace(/<(script|style|pre|form)[\s\S]*?<\/\1>/g, '');
  const paragraphs = [...text.matchAll(/<(p|li|h2)[^>]*>([\s\S]*?)<\/\1>/g)].map(([whole]) => whole);
  const parts: string[] = [];
  for (let words = 0, i = 0; words < WORDS; i++) {
    const part = paragraphs[i % paragraphs.length]!;
    words += part.replace(/<[^>]*>/g, '').split(/\s+/).length;
    parts.push(part);
  }
  return `<!doctype html><meta charset="utf-8"><title>Long</title>${parts.join('\n')}`;
}
