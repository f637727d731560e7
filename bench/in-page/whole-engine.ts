import { splitKey } from '../../src/analyze/index.ts';
import type { JudgeWords, WordsJudged } from '../../src/contract/page-contract.ts';
import { startOverlay } from '../../src/overlay/start-overlay.ts';
import { watchUnreadText } from '../../src/overlay/watch-unread-text.ts';
import type { ToJudge } from './judge-worker.ts';
import { openJudges } from './open-judges.ts';

/**
 * The overlay in a page, and the engine on another thread. The overlay asks the engine by messages, as the page asks
 * the background in the extension.
 */
export interface WholeEngine {
  /** Shades the whole page for a group at a step of the sequence. Returns the time in milliseconds. */
  shade(): Promise<number>;
  /** Shades again for a group that was taught something else. */
  reshade(step: number): Promise<number>;
  /** Returns the number of words of the page, and the number of marked words. */
  count(): Promise<{ words: number; marked: number }>;
  /** Returns the distinct words that have a mark anywhere on the page, near the view or not, in the spelling of keys. */
  markedWords(): Promise<string[]>;
  stop(): Promise<void>;
}

/** Opens the engine with the bytes of the word table. `worker` is the address of the script that judges. */
export function openEngine(table: Uint8Array, sequence: unknown, worker: string): WholeEngine {
  const ask = openWorker(worker, { table, sequence });
  const judgeAt = openJudges(table, sequence);
  let step = 12;
  let running: { overlay: ReturnType<typeof startOverlay>; stop: AbortController } | undefined;
  return {
    async shade() {
      const stop = new AbortController();
      const start = performance.now();
      const overlay = startOverlay(document, {
        scope: 'page',
        judge: (words) => ask(step, words),
        loadFindArticle: async () => async () => null,
        loadWatchUnread: async () => watchUnreadText,
        signal: stop.signal,
      });
      running = { overlay, stop };
      await overlay.ready;
      return performance.now() - start;
    },
    async reshade(wanted) {
      const start = performance.now();
      step = wanted;
      await running!.overlay.rejudge();
      return performance.now() - start;
    },
    async count() {
      const { words: counts } = await running!.overlay.words();
      const words = counts.reduce((sum, [, count]) => sum + count, 0);
      const marked = ['wr-1', 'wr-2', 'wr-3'].map((name) => CSS.highlights.get(name)?.size ?? 0);
      return { words, marked: marked.reduce((sum, size) => sum + size) };
    },
    async markedWords() {
      const isMarked = new Set(['beyond', 'fresh', 'unsure']);
      const judge = judgeAt(step);
      const keys = (await running!.overlay.words()).words.map(([key]) => key);
      return [
        ...new Set(keys.filter((key) => isMarked.has(judge(key).standing)).map((key) => splitKey(key).word)),
      ];
    },
    async stop() {
      running?.stop.abort();
      while (document.adoptedStyleSheets.length > 0)
        await new Promise((drawn) => requestAnimationFrame(drawn));
    },
  };
}

/** Starts the worker, and returns a function that asks the worker to judge words. */
function openWorker(
  address: string,
  first: ToJudge,
): (step: number, words: Parameters<JudgeWords>[0]) => Promise<WordsJudged> {
  const worker = new Worker(address);
  const waiting = new Map<number, (judged: WordsJudged) => void>();
  const tell = (message: ToJudge): void => worker.postMessage(message);
  tell(first);
  worker.onmessage = ({ data }: MessageEvent<{ id: number; judged: WordsJudged }>) => {
    waiting.get(data.id)!(data.judged);
    waiting.delete(data.id);
  };
  let id = 0;
  return (step, words) =>
    new Promise((resolve) => {
      waiting.set(++id, resolve);
      tell({ id, step, words });
    });
}
