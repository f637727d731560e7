import {
  compileGroup,
  createAnalyzer,
  createJudge,
  markReading,
  openLexicon,
  parseGroup,
  parseSequence,
  splitKey,
} from '../../src/analyze/index.ts';
import { startOverlay } from '../../src/overlay/start-overlay.ts';

/** Overlay and engine in one page, so that all of their work is on one clock. */
export interface WholeEngine {
  /** Shades the whole page for a group at a step of the sequence; gives the milliseconds it took. */
  shade(): Promise<number>;
  /** Shades again for a group that was taught something else. */
  reshade(step: number): Promise<number>;
  /** Words of the page and how many of them are marked. */
  count(): { words: number; marked: number };
  /** The distinct words that have a mark anywhere on the page, near the view or not, as they are written in keys. */
  markedWords(): string[];
  stop(): Promise<void>;
}

/** Opens the word table from its bytes; the group is compiled before the clock starts, as a running background has it. */
export function openEngine(table: Uint8Array, sequence: unknown): WholeEngine {
  const analyzer = createAnalyzer(openLexicon(table));
  const parsed = parseSequence(sequence);
  const judgeAt = (step: number) =>
    createJudge(analyzer, compileGroup(parseGroup({ name: 'Herons', sequence: parsed.id, step }), parsed));
  let judge = judgeAt(12);
  let running: { overlay: ReturnType<typeof startOverlay>; stop: AbortController } | undefined;
  return {
    async shade() {
      const stop = new AbortController();
      const start = performance.now();
      const overlay = startOverlay(document, {
        scope: 'page',
        judge: async ({ keys, homographs }) => ({
          standings: keys.map((key) => judge(key).standing),
          readings: homographs
            .map(({ text, start, end, key }) => markReading(text, start, end, key))
            .map((key) => ({ key, standing: judge(key).standing })),
        }),
        loadFindArticle: async () => async () => null,
        signal: stop.signal,
      });
      running = { overlay, stop };
      await overlay.ready;
      return performance.now() - start;
    },
    async reshade(step) {
      const start = performance.now();
      judge = judgeAt(step);
      await running!.overlay.rejudge();
      return performance.now() - start;
    },
    count() {
      const words = running!.overlay.words().words.reduce((sum, [, count]) => sum + count, 0);
      const marked = ['wr-1', 'wr-2', 'wr-3'].map((name) => CSS.highlights.get(name)?.size ?? 0);
      return { words, marked: marked.reduce((sum, size) => sum + size) };
    },
    markedWords() {
      const isMarked = new Set(['beyond', 'fresh', 'unsure']);
      const keys = running!.overlay.words().words.map(([key]) => key);
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
