import type { Standing, WordKey } from '../analyze/types.ts';
import { browser } from './browser.ts';
import { askBackground } from './client.ts';
import { type Answers, answer, isQuestion, type PageNews, type PageWords, type ToPage } from './messages.ts';
import { watchStoredGroups } from './watch-stored.ts';

/** What the host needs of the shading of one document. */
export interface HostedOverlay {
  words(): PageWords;
  rejudge(): Promise<void>;
  goTo(place: { key: WordKey; n: number }): boolean;
}

export interface HostedOptions {
  readonly judge: (keys: readonly WordKey[]) => Promise<readonly Standing[]>;
  readonly signal: AbortSignal;
  readonly onChange: () => void;
}

/** Kept on the content script's own global, so that a second injection finds the first. */
const holder = globalThis as { wordreachStop?: () => void };

/**
 * Runs the shading of the page it is injected into; injected again, it stops it. Stops by itself when the
 * extension is updated or removed, since nobody could answer any more.
 */
export function hostPage(start: (options: HostedOptions) => HostedOverlay): void {
  if (holder.wordreachStop) {
    holder.wordreachStop();
    return;
  }
  const controller = new AbortController();
  const { signal } = controller;
  const stop = (): void => {
    controller.abort();
    delete holder.wordreachStop;
    tell({ news: 'page', shaded: false });
  };
  holder.wordreachStop = stop;

  const overlay = start({
    judge: (keys) =>
      askBackground('judge', keys).catch((error: unknown) => {
        if (!isAlive()) stop();
        throw error;
      }),
    signal,
    onChange: () => tell({ news: 'page', shaded: true }),
  });
  const answers: Answers<ToPage> = { words: overlay.words, goTo: overlay.goTo, stop };
  const listen = (message: unknown): Promise<unknown> | undefined =>
    isQuestion(message, 'page') ? answer(answers, message) : undefined;
  browser.runtime.onMessage.addListener(listen);
  signal.addEventListener('abort', () => browser.runtime?.onMessage?.removeListener(listen), { once: true });
  watchStoredGroups(() => {
    void overlay.rejudge().then(() => tell({ news: 'page', shaded: true }));
  }, signal);
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
