import { rmSync } from 'node:fs';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { createPicker } from '../../src/lesson/picker.ts';
import { browserName } from '../e2e/browser.ts';
import { editors } from './editors.ts';
import { type KillableBrowser, startKillable } from './killable-browser.ts';

/**
 * The browser is killed at a random moment while somebody types (SIGKILL, as when the power goes or memory runs out): a second of it is lost at
 * most, and its next start shows the rest. 100 moments in `npm run attack`, in every editor and both browsers; four in the tests, other
 * editors in each browser. `KILLS` and `SEED` choose others.
 */

const KILLS = Number(process.env.KILLS ?? 4);
const FIRST = process.env.KILLS === undefined && browserName === 'firefox' ? 4 : 0;
const SEED = Number(process.env.SEED ?? 1);
/** The longest wait of an editor, and what a busy machine may take besides to hear a key and to write, in milliseconds. */
const MOST_LOST = 1000;
const BUSY = 1000;

let profile = '';
let running: KillableBrowser | null = null;
beforeAll(async () => {
  profile = await mkdtemp(join(tmpdir(), 'wordreach-'));
});
afterAll(async () => {
  await running?.context.close();
  rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
});

/** The worst of all kills so far. */
const worst = { lost: 0, where: 'nowhere' };
afterAll(() => console.log(`${KILLS} kills: the most that was lost is ${worst.lost} ms, in ${worst.where}`));

const moments = Array.from({ length: KILLS }, (_, n) => {
  const { below } = createPicker(SEED, `kill ${n}`);
  const editor = editors[(n + FIRST) % editors.length]!;
  // From the first keys on; slower and faster than any pause of the editors.
  return { n, editor, name: editor.name, after: 200 + below(4800), key: 30 + below(270) };
});

test.each(moments)(
  '$n: killed $after ms into $name',
  { timeout: 120_000 },
  async ({ n, editor, after, key }) => {
    running ??= await startKillable(profile);
    const page = await running.context.newPage();
    await editor.open(page, running.inside);
    const typed = await typeUntilKilled(page, running, tagOf(n), after, key);
    running = null;
    running = await startKillable(profile);
    const next = await running.context.newPage();
    const shown = await editor.kept(next, running.inside);
    const start = commonStart(shown, typed.text);
    // Less than its own word may be of an earlier kill.
    const kept = start < TAG ? 0 : start;
    const lost = kept === typed.text.length ? 0 : Math.round(typed.killed - typed.times[kept]!);
    if (lost > worst.lost) Object.assign(worst, { lost, where: editor.name });
    expect(lost, `${kept} of ${typed.text.length} letters are there: "${shown.slice(0, 80)}"`).toBeLessThan(
      MOST_LOST + BUSY,
    );
    // Nothing else got in between.
    if (kept > 0) expect(typed.text.startsWith(shown)).toBe(true);
    await next.close();
  },
);

interface Typed {
  readonly text: string;
  /** When each letter was typed, and when the browser was killed, in milliseconds. */
  readonly times: readonly number[];
  readonly killed: number;
}

/** Types a letter each `key` milliseconds, and kills the browser after so many, wherever that is. */
async function typeUntilKilled(
  page: Page,
  browser: KillableBrowser,
  tag: string,
  after: number,
  key: number,
): Promise<Typed> {
  const text = `${tag} ${'tides at the quay '.repeat(20)}`;
  const times: number[] = [];
  let isOver = false;
  const typing = (async () => {
    for (const letter of text) {
      if (isOver) return;
      await page.keyboard.type(letter);
      times.push(performance.now());
      await wait(key);
    }
  })();
  // The last key meets no browser any more.
  typing.catch(() => undefined);
  await wait(after);
  isOver = true;
  const killed = performance.now();
  const typed = times.length;
  await browser.kill();
  await typing.catch(() => undefined);
  return { text: text.slice(0, typed), times, killed };
}

function commonStart(shown: string, typed: string): number {
  let n = 0;
  while (n < shown.length && shown[n] === typed[n]) n++;
  return n;
}

/** As long as the word of each kill, with a blank. */
const TAG = 3;

/** A word of its own for each kill, so that nothing of an earlier one is taken for it. */
function tagOf(n: number): string {
  return `${'abcdefghij'[Math.floor(n / 10) % 10]}${'klmnopqrst'[n % 10]}`;
}
