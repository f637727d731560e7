import { say } from '../wording/say.ts';
import { browser } from './browser.ts';
import { readReply } from './hear-messages.ts';
import type { Answer, Given, PageWords, Question, Scope, ToBackground, ToPage } from './messages.ts';

/** Asks the background; it is woken when it sleeps, and asked once more when it is stopped before it answers. Rejects when the extension was updated meanwhile. */
export async function askBackground<N extends keyof ToBackground>(
  ask: N,
  given: Given<ToBackground, N>,
): Promise<Answer<ToBackground, N>> {
  const question: Question = { to: 'background', ask, given };
  const send = (): Promise<unknown> => browser.runtime.sendMessage(question);
  // One that is stopped leaves the question without an answer, or says that the line is closed.
  const reply = (await send().catch(() => undefined)) ?? (await send());
  if (!reply) throw new Error(say('host.noAnswer'));
  return readReply(reply) as Answer<ToBackground, N>;
}

/** Asks the shaded page in one frame of a tab, or in whichever answers first; null when nothing answers. */
export async function askPage<N extends keyof ToPage>(
  tab: number,
  ask: N,
  given: Given<ToPage, N>,
  frame?: number,
): Promise<Answer<ToPage, N> | null> {
  const question: Question = { to: 'page', ask, given };
  try {
    const options = frame === undefined ? {} : { frameId: frame };
    const answer = readReply(await browser.tabs.sendMessage(tab, question, options));
    return (answer ?? null) as Answer<ToPage, N> | null;
  } catch {
    return null;
  }
}

/** The frames of a tab that may be read, the page itself (0) first. Rejects where none may. */
export async function listFrames(tab: number): Promise<number[]> {
  const results = await browser.scripting.executeScript({
    target: { tabId: tab, allFrames: true },
    func: () => undefined,
  });
  return results.map(({ frameId }) => frameId).sort((a, b) => a - b);
}

/** The words of a shaded page with those of its frames; null when it is not shaded. */
export async function askWords(tab: number): Promise<PageWords | null> {
  const top = await askPage(tab, 'words', undefined as never, 0);
  if (!top) return null;
  const frames = (await listFrames(tab).catch(() => [])).filter((frame) => frame !== 0);
  const parts = await Promise.all(frames.map((frame) => askPage(tab, 'words', undefined as never, frame)));
  const all = [top, ...parts.filter((part) => part !== null)];
  // Firefox lets the button's click reach frames of other sites too, where Chromium does not.
  const read = new Set(all.map(({ url }) => url));
  return {
    ...top,
    words: all.flatMap(({ words }) => words),
    skipped: all.reduce((sum, { skipped }) => sum + skipped, 0),
    written: all.reduce((sum, { written }) => sum + written, 0),
    covered: all.reduce((sum, { covered }) => sum + covered, 0),
    rows: all.some(({ rows }) => rows),
    selection: all.some(({ selection }) => selection),
    foreign: all.flatMap(({ foreign }) => foreign).filter(({ url, why }) => why === 'pdf' || !read.has(url)),
    restless: all.some(({ restless }) => restless),
  };
}

/** Goes to the n-th place of a word in a page and its frames, counting on from the first after the last. */
export async function goToPlace(tab: number, key: string, n: number): Promise<boolean> {
  const frames = await listFrames(tab).catch(() => [0]);
  let before = 0;
  for (const frame of frames) {
    const there = (await askPage(tab, 'goTo', { key, n: n - before }, frame)) ?? 0;
    if (n - before < there) return true;
    before += there;
  }
  return before > 0 && goToPlace(tab, key, n % before);
}

/** Checks another text of a page in all its frames; gives the one that is checked then. */
export async function setScope(tab: number, scope: Scope): Promise<Scope | null> {
  const frames = await listFrames(tab).catch(() => [0]);
  const reached = await Promise.all(frames.map((frame) => askPage(tab, 'setScope', scope, frame)));
  return reached[0] ?? null;
}
