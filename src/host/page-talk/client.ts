import type { FrameWords, PageWords, ScopeKind } from '../../contract/page-contract.ts';
import { sayPlain } from '../../wording/say.ts';
import { browser } from '../browser.ts';
import { readReply } from './hear-messages.ts';
import type { Answer, Given, Question, ToBackground, ToPage } from './messages.ts';

/**
 * The time after which a frame that has not answered is left out, in milliseconds. Such a frame may hang, as adverts
 * do.
 */
const FRAME_LIMIT = 1000;
/** The number of the page itself among its frames. */
export const PAGE = 0;

/**
 * Asks the background a question. The browser wakes the background if it sleeps. If the background is stopped before it
 * answers, the question is asked once more. Rejects when the extension was updated meanwhile.
 */
export async function askBackground<N extends keyof ToBackground>(
  ask: N,
  given: Given<ToBackground, N>,
): Promise<Answer<ToBackground, N>> {
  const question: Question = { to: 'background', ask, given };
  const send = (): Promise<unknown> => browser.runtime.sendMessage(question);
  // A stopped background leaves the question without an answer, or says that the line is closed.
  const reply = (await send().catch(() => undefined)) ?? (await send());
  if (!reply) throw new Error(sayPlain('host.noAnswer'));
  return readReply(reply) as Answer<ToBackground, N>;
}

/** Asks the shaded page in one frame of a tab, or in whichever frame answers first. Returns null when no frame answers. */
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

/**
 * Returns the frames within the page of a tab that may be read, without the page itself. The frames are listed at once,
 * whether they have loaded or not. Otherwise the browser would wait for all of them, even for a frame that never loads.
 * Rejects if no frame may be read.
 */
export async function listInnerFrames(tab: number): Promise<number[]> {
  const results = await browser.scripting.executeScript({
    target: { tabId: tab, allFrames: true },
    injectImmediately: true,
    func: () => undefined,
  });
  return results
    .map(({ frameId }) => frameId)
    .filter((frame) => frame !== PAGE)
    .sort((a, b) => a - b);
}

/** Returns the page and the frames within it, or the page alone if the frames may not be read. */
async function listAllFrames(tab: number): Promise<number[]> {
  return [PAGE, ...(await listInnerFrames(tab).catch(() => []))];
}

/** Asks a frame, and waits for it no longer than `FRAME_LIMIT`. */
function askFrame<N extends keyof ToPage>(
  tab: number,
  ask: N,
  given: Given<ToPage, N>,
  frame: number,
): Promise<Answer<ToPage, N> | null | 'late'> {
  const asked = askPage(tab, ask, given, frame);
  if (frame === PAGE) return asked;
  return new Promise((resolve) => {
    const timer = setTimeout(() => resolve('late'), FRAME_LIMIT);
    void asked.then((answer) => {
      clearTimeout(timer);
      resolve(answer);
    });
  });
}

/**
 * Asks a page and its frames. Returns the answers in the order of the frames, the page's own answer first. A frame that
 * does not answer in time is left out.
 */
export async function askFrames<N extends keyof ToPage>(
  tab: number,
  ask: N,
  given: Given<ToPage, N>,
): Promise<NonNullable<Answer<ToPage, N>>[]> {
  const frames = await listAllFrames(tab);
  const answers = await Promise.all(frames.map((frame) => askFrame(tab, ask, given, frame)));
  return answers.filter((answer) => answer !== null && answer !== 'late') as NonNullable<Answer<ToPage, N>>[];
}

/**
 * Yields the words of a shaded page: first the page's own words, then the words with each frame that has answered, and
 * last also the number of frames that did not answer. Yields nothing when the page is not shaded.
 */
export async function* followWords(tab: number): AsyncGenerator<PageWords> {
  const top = await askPage(tab, 'words', undefined as never, PAGE);
  if (!top) return;
  yield join([top], 0);
  const [, ...frames] = await listAllFrames(tab);
  const waiting = new Map(
    frames.map((frame) => [
      frame,
      askFrame(tab, 'words', undefined as never, frame).then((answer) => ({ frame, answer })),
    ]),
  );
  const parts: FrameWords[] = [top];
  let silent = 0;
  while (waiting.size > 0) {
    const { frame, answer } = await Promise.race(waiting.values());
    waiting.delete(frame);
    if (answer === 'late') silent++;
    else if (answer) parts.push(answer);
    if (waiting.size === 0 || (answer !== 'late' && answer && answer.words.length > 0))
      yield join(parts, waiting.size === 0 ? silent : 0);
  }
}

/** Returns the words of a shaded page and its frames, or null if the page is not shaded. */
export async function askWords(tab: number): Promise<PageWords | null> {
  let words: PageWords | null = null;
  for await (words of followWords(tab));
  return words;
}

function join(parts: readonly FrameWords[], silentFrames: number): PageWords {
  // In Firefox a click on the button also gives access to frames of other sites; in Chromium it does not.
  const read = new Set(parts.map(({ url }) => url));
  return {
    ...parts[0]!,
    words: parts.flatMap(({ words }) => words),
    skipped: parts.reduce((sum, { skipped }) => sum + skipped, 0),
    written: parts.reduce((sum, { written }) => sum + written, 0),
    covered: parts.reduce((sum, { covered }) => sum + covered, 0),
    rows: parts.some(({ rows }) => rows),
    selection: parts.some(({ selection }) => selection),
    foreign: parts
      .flatMap(({ foreign }) => foreign)
      .filter(({ url, why }) => why === 'pdf' || !read.has(url)),
    restless: parts.some(({ restless }) => restless),
    fault: parts.find(({ fault }) => fault !== null)?.fault ?? null,
    silentFrames,
  };
}

/** Goes to the n-th place of a word in a page and its frames. After the last place, the count goes on from the first. */
export async function goToPlace(tab: number, key: string, n: number): Promise<boolean> {
  const frames = await listAllFrames(tab);
  const find = async (wanted: number): Promise<number | null> => {
    let before = 0;
    for (const frame of frames) {
      const there = await askFrame(tab, 'goTo', { key, n: wanted - before }, frame);
      if (there === 'late' || there === null) continue;
      if (wanted - before < there) return null;
      before += there;
    }
    return before;
  };
  const total = await find(n);
  if (total === null) return true;
  return total > 0 && (await find(n % total)) === null;
}

/** Checks another text of a page in all its frames. Returns the text that is then checked in the page itself. */
export async function setScope(tab: number, scope: ScopeKind): Promise<ScopeKind | null> {
  const [reached] = await askFrames(tab, 'setScope', scope);
  return reached ?? null;
}
