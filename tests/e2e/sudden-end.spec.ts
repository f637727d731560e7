import { readlinkSync, rmSync } from 'node:fs';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect } from 'vitest';
import { findChromium } from '../../src/tools/find-browser.ts';
import { builtExtension } from '../../src/tools/launch-extension.ts';
import { onlyIn } from './browser.ts';

/** The browser is killed while somebody types (SIGKILL, as when the power goes or memory runs out): a second of it is lost at most. */

const chromiumTest = onlyIn('chromium', 'debugging protocol');
/** A key each time so many milliseconds have gone by: slower and faster than any pause of the editors. */
const KEY = 120;
/** The longest wait of an editor is a second; a busy machine may take another to write. */
const MOST_LOST = Math.ceil(2000 / KEY);

let profile = '';
beforeAll(async () => {
  profile = await mkdtemp(join(tmpdir(), 'wordreach-'));
});
afterAll(async () => {
  await running?.context.close();
  rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
});

interface Started {
  readonly context: BrowserContext;
  inside(path: string): string;
}
/** The browser that came after the last kill; the next test goes on in it. */
let running: Started | null = null;

async function start(): Promise<Started> {
  running ??= await launch();
  return running;
}

async function launch(): Promise<Started> {
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: findChromium(),
    headless: false,
    ignoreDefaultArgs: ['--disable-extensions'],
    args: [
      '--headless=new',
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      '--enable-unsafe-extension-debugging',
      '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1, EXCLUDE localhost',
    ],
  });
  const session = await context.browser()!.newBrowserCDPSession();
  const { id } = (await session.send(
    'Extensions.loadUnpacked' as never,
    { path: builtExtension } as never,
  )) as unknown as { id: string };
  return { context, inside: (path) => `chrome-extension://${id}/${path}` };
}

/** Ends the browser's own process, which the profile names; nothing of it gets to say goodbye. */
async function kill(context: BrowserContext): Promise<void> {
  const gone = new Promise<void>((resolve) => context.once('close', () => resolve()));
  process.kill(Number(readlinkSync(join(profile, 'SingletonLock')).split('-').at(-1)), 'SIGKILL');
  await gone;
  running = null;
  rmSync(join(profile, 'SingletonLock'), { force: true });
}

/** Types without a rest for so many keys, then kills the browser at once. Gives what was typed. */
async function typeAndKill(page: Page, context: BrowserContext, keys: number): Promise<string> {
  const typed = Array.from({ length: keys }, (_, i) => (i % 6 === 5 ? ' ' : 'tidesx'[i % 6])).join('');
  await page.keyboard.type(typed, { delay: KEY });
  await kill(context);
  return typed;
}

function expectKept(kept: string, typed: string): void {
  const length = kept.length;
  expect(typed.startsWith(kept)).toBe(true);
  expect(typed.length - length, `${length} of ${typed.length} are kept`).toBeLessThanOrEqual(MOST_LOST);
}

chromiumTest.each([40, 53, 67])(
  'the desk keeps what was typed, %s keys',
  { timeout: 120_000 },
  async (keys) => {
    const first = await start();
    const desk = await first.context.newPage();
    await desk.goto(first.inside('desk.html#new'));
    await desk.locator('#pasted').fill('Bram.');
    await desk.getByRole('button', { name: 'Make a passage' }).click();
    const field = desk.locator('.cm-content');
    await field.click();
    await desk.keyboard.press('Control+A');
    const typed = await typeAndKill(desk, first.context, keys);

    const again = await start();
    const page = await again.context.newPage();
    await page.goto(first.inside('desk.html'));
    const kept = await page.evaluate(
      () =>
        new Promise<string>((resolve) => {
          const open = indexedDB.open('desk');
          open.onsuccess = () => {
            const all = open.result.transaction('passages').objectStore('passages').getAll();
            all.onsuccess = () => {
              const [last] = (
                all.result as { saved: number; versions: Record<string, { text: string }> }[]
              ).sort((a, b) => b.saved - a.saved);
              resolve(Object.values(last!.versions)[0]?.text ?? '');
            };
          };
        }),
    );
    expectKept(kept, typed);
    await page.close();
  },
);

chromiumTest('a text typed for the desk is offered again', { timeout: 120_000 }, async () => {
  const first = await start();
  const desk = await first.context.newPage();
  await desk.goto(first.inside('desk.html#new'));
  await desk.locator('#pasted').click();
  const typed = await typeAndKill(desk, first.context, 45);

  const again = await start();
  const page = await again.context.newPage();
  await page.goto(first.inside('desk.html#new'));
  await expect.poll(() => page.locator('#pasted').inputValue()).not.toBe('');
  expectKept(await page.locator('#pasted').inputValue(), typed);
  await page.getByRole('button', { name: 'Make a passage' }).click();
  await page.locator('.cm-content').waitFor();
  await page.goto(first.inside('desk.html#new'));
  await page.reload();
  await page.locator('#pasted').waitFor();
  expect(await page.locator('#pasted').inputValue()).toBe('');
  await page.close();
});

chromiumTest(
  'names typed for a group are offered again, kept or discarded',
  { timeout: 120_000 },
  async () => {
    const first = await start();
    const groups = await first.context.newPage();
    await groups.goto(first.inside('groups.html#group/herons'));
    await groups.getByRole('textbox', { name: 'Names', exact: true }).click();
    await groups.keyboard.press('Control+A');
    const typed = await typeAndKill(groups, first.context, 42);

    const again = await start();
    const page = await again.context.newPage();
    await page.goto(first.inside('groups.html#group/herons'));
    await page.getByText('You typed this before the browser closed').waitFor();
    expectKept(await page.getByRole('textbox', { name: 'Names', exact: true }).inputValue(), typed);
    await page.getByRole('button', { name: 'Save it' }).click();
    const names = () =>
      page.evaluate(async () => {
        const { groups } = (await chrome.storage.local.get('groups')) as {
          groups?: { groups: Record<string, { names: string[] }> };
        };
        return groups?.groups.herons?.names ?? [];
      });
    await expect.poll(names).toContain('tides');
    await page.reload();
    await page.getByRole('textbox', { name: 'Names', exact: true }).waitFor();
    expect(await page.getByText('You typed this before the browser closed').count()).toBe(0);
    await page.close();
  },
);

chromiumTest('a lesson keeps what was typed in it', { timeout: 120_000 }, async () => {
  const first = await start();
  const lesson = await first.context.newPage();
  await lesson.goto(first.inside('lesson.html#herons'));
  await lesson.getByRole('button', { name: 'Edit' }).first().click();
  await lesson.locator('.lesson-editor input[type=text]').first().click();
  await lesson.keyboard.press('Control+A');
  const typed = await typeAndKill(lesson, first.context, 42);

  const again = await start();
  const page = await again.context.newPage();
  await page.goto(first.inside('lesson.html#herons'));
  const stored = await page.evaluate(async () => JSON.stringify(await chrome.storage.local.get(null)));
  const kept = /tides [a-z ]*/.exec(stored)?.[0] ?? '';
  expectKept(kept, typed);
  await page.close();
});
