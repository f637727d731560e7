import type { PageOptions, PagePart, ShadedPage } from '../../contract/page-contract.ts';
import { browser } from '../browser.ts';
import { loadLook, loadPrivateMarks, watchLook, watchPrivateMarks } from '../store/look.ts';
import { watchStoredGroups } from '../store/watch-stored.ts';
import { askBackground } from './client.ts';
import { hearMessages } from './hear-messages.ts';
import { type Answers, answer, isQuestion, type PageNews, type ToPage } from './messages.ts';

/**
 * The content script's own global, which no page sees, keeps the running host and the parts: a second injection finds the first.
 * By symbols, since an element of the page answers to its id there.
 */
const RUNNING = Symbol.for('wordreach');
const PARTS = Symbol.for('wordreach parts');
const holder = globalThis as {
  [RUNNING]?: { readonly document: Document; readonly stop: () => void };
  [PARTS]?: Partial<Record<PagePart, unknown>>;
};

/** Hands parts of the content script to the rest of it. */
export function offerPart<Parts extends Record<PagePart, unknown>>(parts: Partial<Parts>): void {
  holder[PARTS] = { ...holder[PARTS], ...parts };
}

/**
 * Runs the shading of the page it is injected into; injected again, it goes on. Stops by itself when the
 * extension is updated or removed, since nobody could answer any more.
 */
export function hostPage<Parts extends Record<PagePart, unknown>>(
  start: (options: PageOptions<Parts>) => ShadedPage,
): void {
  // A frame keeps its global when the empty document it begins with gives way to the one that loads.
  if (holder[RUNNING]?.document === document && isAlive()) return;
  holder[RUNNING]?.stop();
  const controller = new AbortController();
  const { signal } = controller;
  const stop = (): true => {
    controller.abort();
    delete holder[RUNNING];
    tell({ news: 'page', shaded: false });
    return true;
  };
  holder[RUNNING] = { document, stop };
  const ask = <A>(answer: Promise<A>): Promise<A> =>
    answer.catch((error: unknown) => {
      if (!isAlive()) stop();
      throw error;
    });

  const page = start({
    // No mark is made before it is known who may see it.
    judge: (words) => looked.then(() => ask(askBackground('judge', words))),
    explain: (key) => ask(askBackground('explain', key)),
    act: (action) => ask(askBackground('act', action)),
    swaps: (word) => ask(askBackground('swaps', word)),
    bring: async (part) => {
      if (!holder[PARTS]?.[part]) await ask(askBackground('bring', part));
      return holder[PARTS]![part] as Parts[typeof part];
    },
    signal,
    onChange: tellShaded,
  });
  const { setLook, hideMarks, ready, ...answered } = page;
  const hideIf = (isPrivate: boolean): void => {
    if (isPrivate) hideMarks();
  };
  const looked = Promise.all([loadLook().then(setLook), loadPrivateMarks().then(hideIf)]).catch(
    () => undefined,
  );
  // The content of a frame of another site may be anybody's.
  hideIf(self !== top && frameElement === null);
  watchLook(setLook, signal);
  watchPrivateMarks(hideIf, signal);
  const answers: Answers<ToPage> = {
    ...answered,
    words: () => ready.then(page.words, page.words),
    start: () => true,
    stop,
  };
  const shadeFrames = (): void => {
    if (!signal.aborted) askBackground('shadeFrames', undefined as never).catch(() => undefined);
  };
  // The page's own words come first.
  if (self === top) void ready.then(shadeFrames, shadeFrames);
  // Some frames load later: lazy ones below the view, and frames of slow servers.
  const onLoad = ({ target }: Event): void => {
    if (/frame$/i.test((target as Element).tagName)) shadeFrames();
  };
  document.addEventListener('load', onLoad, { capture: true, signal });
  hearMessages(
    (message, sender) => (isQuestion(message, 'page') ? answer(answers, message, sender) : undefined),
    signal,
  );
  watchStoredGroups(() => {
    page.rejudge().then(tellShaded, tellShaded);
  }, signal);
}

function tellShaded(): void {
  tell({ news: 'page', shaded: true });
}

/** Nobody may be listening; that is no fault. */
function tell(news: PageNews): void {
  if (isAlive()) browser.runtime.sendMessage(news).catch(() => undefined);
}

/** False once the extension was updated or removed under a page that is still open. */
function isAlive(): boolean {
  try {
    return browser.runtime.id !== undefined;
  } catch {
    return false;
  }
}
