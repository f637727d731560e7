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
 * Kills the browser at a random moment while somebody types (SIGKILL, as in a power failure or when memory runs out).
 * At most a second of typing is lost, and the next start shows the rest. `npm run attack` kills at 100 moments, in
 * every editor and both browsers. The normal tests kill at four moments, in different editors for each browser. `KILLS`
 * and `SEED` choose other moments.
 */

const KILLS = Number(process.env.KILLS ?? 4);
const FIRST = process.env.KILLS === undefined && browserName === 'firefox' ? 4 : 0;
const SEED = Number(process.env.SEED ?? 1);
/**
 * The longest delay of an editor before it saves. `BUSY` is the extra time that a busy machine may need to receive a
 * key and to write. In milliseconds.
 */
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

/** The largest loss of all kills so far. */
const worst = { lost: 0, where: 'nowhere' };
afterAll(() => console.log(`${KILLS} kills: the most that was lost is ${worst.lost} ms, in ${worst.where}`));

const moments = Array.from({ length: KILLS }, (_, n) => {
  const { below } = createPicker(SEED, `kill ${n}`);
  const editor = editors[(n + FIRST) % editors.length]!;
  // The kill may happen as early as the first keys. Keys are typed both slower and faster than any pause of the
  // editors.
  return { n, editor, name: editor.name, after: 200 + below(4800), key: 30 + below(270) };
});

test.each(moments)(
  '$n: killed $after ms into $name, the browser loses at most a second of typing',
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
    // A match that is shorter than the tag may come from an earlier kill.
    const kept = start < TAG ? 0 : start;
    const lost = kept === typed.text.length ? 0 : Math.round(typed.killed - typed.times[kept]!);
    if (lost > worst.lost) Object.assign(worst, { lost, where: editor.name });
    expect(lost, `${kept} of ${typed.text.length} letters are there: "${shown.slice(0, 80)}"`).toBeLessThan(
      MOST_LOST + BUSY,
    );
    // No other text was inserted in between.
    if (kept > 0) expect(typed.text.startsWith(shown)).toBe(true);
    await next.close();
  },
);

interface Typed {
  readonly text: string;
  /** The times at which each letter was typed. `killed` is the time at which the browser was killed. In milliseconds. */
  readonly times: readonly number[];
  readonly killed: number;
}

/** Types a letter every `key` milliseconds, and kills the browser `after` milliseconds, wherever the typing is. */
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
  // The last key may fail, because the browser is gone.
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

/** The length of the tag of a kill, including a space. */
const TAG = 3;

/** Returns a unique tag for each kill, so that text from an earlier kill is not mistaken for text of this kill. */
function tagOf(n: number): string {
  return `${'abcdefghij'[Math.floor(n / 10) % 10]}${'klmnopqrst'[n % 10]}`;
}
