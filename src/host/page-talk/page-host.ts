import type { PageOptions, PagePart, ShadedPage } from '../../contract/page-contract.ts';
import { browser } from '../browser.ts';
import { loadLook, loadPrivateMarks, watchLook, watchPrivateMarks } from '../store/look.ts';
import { watchStoredGroups } from '../store/watch-stored.ts';
import { askBackground } from './client.ts';
import { hearMessages } from './hear-messages.ts';
import { type Answers, answer, isQuestion, type PageNews, type ToPage } from './messages.ts';

/**
 * The content script's own global keeps the running host and the parts, so that a second injection finds the first. No
 * page sees this global. The keys are symbols, because string names there can refer to elements of the page with that
 * id.
 */
const RUNNING = Symbol.for('wordreach');
const PARTS = Symbol.for('wordreach parts');
const holder = globalThis as {
  [RUNNING]?: { readonly document: Document; readonly stop: () => void };
  [PARTS]?: Partial<Record<PagePart, unknown>>;
};

/** Makes parts of the content script available to the rest of the script. */
export function offerPart<Parts extends Record<PagePart, unknown>>(parts: Partial<Parts>): void {
  holder[PARTS] = { ...holder[PARTS], ...parts };
}

/**
 * Runs the shading of the page it is injected into. A second injection lets the running shading continue. The shading
 * stops by itself when the extension is updated or removed, since nobody could answer any more.
 */
export function hostPage<Parts extends Record<PagePart, unknown>>(
  start: (options: PageOptions<Parts>) => ShadedPage,
): void {
  // A frame keeps its global when the document that loads replaces the empty document it begins with.
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
    // No mark is made before it is known who may see the marks.
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
  const { setLook, hideMarks, read, ready, ...answered } = page;
  const hideIf = (isPrivate: boolean): void => {
    if (isPrivate) hideMarks();
  };
  const looked = Promise.all([loadLook().then(setLook), loadPrivateMarks().then(hideIf)]).catch(
    () => undefined,
  );
  // The content of a frame of another site may belong to anybody.
  hideIf(self !== top && frameElement === null);
  watchLook(setLook, signal);
  watchPrivateMarks(hideIf, signal);
  const answers: Answers<ToPage> = {
    ...answered,
    words: () => read.then(page.words, page.words),
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

/** Sends news of the page. It is no error if nobody listens. */
function tell(news: PageNews): void {
  if (isAlive()) browser.runtime.sendMessage(news).catch(() => undefined);
}

/** Returns false once the extension was updated or removed while the page is still open. */
function isAlive(): boolean {
  try {
    return browser.runtime.id !== undefined;
  } catch {
    return false;
  }
}
