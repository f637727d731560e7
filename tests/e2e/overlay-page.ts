import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { build, type Rollup } from 'vite';
import { splitKey } from '../../src/analyze/index.ts';
import type { ScopeKind, Shown } from '../../src/contract/page-contract.ts';
import type { Overlay } from '../../src/overlay/start-overlay.ts';

/** The test's objects in a page in which only the overlay runs. */
interface Holder {
  readonly overlay: Overlay;
  readonly stop: () => void;
  /** Returns a promise that resolves at the next change of the page's words. */
  readonly nextChange: () => Promise<void>;
  /** The keys requested so far, one list for each request. */
  readonly asked: string[][];
  /** While true, every request is answered with an error. While a word, every request with this word is. */
  refuses: boolean | string;
  /** The words that were marked when the search for the story began. */
  markedEarly: string[];
}

declare global {
  var wordreachTest: Holder;
}

/** A page in which only the overlay runs. By default, every word that the overlay finds is marked as beyond. */
export interface OverlayPage {
  readonly page: Page;
  /** Returns the marked pieces in the overlay's order. The pieces of a word in two nodes are joined with `·`. */
  marked(): Promise<string>;
  /** Returns the keys with their counts, as `key` or `key×2`. */
  keys(): Promise<string>;
  /** Changes the page, and waits until the overlay has handled the change. */
  change(how: () => void): Promise<void>;
  stop(): Promise<void>;
}

let code: Promise<string> | undefined;

/**
 * Fills a page with `html`, runs `before` in the page, and starts the overlay. Returns once everything is shaded. By
 * default, the whole page is read; `scope` chooses another part, and `null` leaves the choice to the overlay. By
 * default, every word is beyond; `standing` sets another standing.
 */
export async function openOverlayPage(
  page: Page,
  html: string,
  before?: () => void,
  scope: ScopeKind | null = 'page',
  standing: Shown = 'beyond',
): Promise<OverlayPage> {
  code ??= bundleOverlay();
  await page.setContent(html);
  if (before) await page.evaluate(before);
  await page.evaluate(await code);
  await page.evaluate(startInPage, { scope, standing });
  return {
    page,
    marked: () => page.evaluate(markedInPage),
    keys: async () => {
      const words = await page.evaluate(async () => (await wordreachTest.overlay.words()).words);
      const counts = new Map<string, number>();
      for (const [key, count] of words) {
        const { word } = splitKey(key);
        counts.set(word, (counts.get(word) ?? 0) + count);
      }
      return [...counts].map(([word, count]) => (count === 1 ? word : `${word}×${count}`)).join(' ');
    },
    change: async (how) => {
      const followed = await page.evaluateHandle(() => ({ done: wordreachTest.nextChange() }));
      await page.evaluate(how);
      await followed.evaluate(({ done }) => done);
    },
    stop: async () => {
      await page.evaluate(() => wordreachTest.stop());
      await page.waitForFunction(() => document.adoptedStyleSheets.length === 0);
    },
  };
}

async function bundleOverlay(): Promise<string> {
  const entry = fileURLToPath(new URL('overlay-alone.ts', import.meta.url));
  const built = (await build({
    configFile: false,
    logLevel: 'silent',
    publicDir: false,
    build: { write: false, minify: false, lib: { entry, formats: ['iife'], name: 'wordreachOverlay' } },
  })) as Rollup.RollupOutput[];
  return built[0]!.output[0].code.replace('var wordreachOverlay', 'globalThis.wordreachOverlay');
}

function startInPage({ scope, standing }: { scope: ScopeKind | null; standing: Shown }): Promise<void> {
  const { startOverlay, findArticle, watchUnreadText } = (
    globalThis as unknown as { wordreachOverlay: typeof import('./overlay-alone.ts') }
  ).wordreachOverlay;
  const controller = new AbortController();
  const asked: string[][] = [];
  let waiting: (() => void)[] = [];
  const overlay = startOverlay(document, {
    judge: async ({ keys, homographs }) => {
      const { refuses } = wordreachTest;
      if (refuses === true || (refuses && keys.includes(refuses))) throw new Error('refused');
      asked.push([...keys]);
      return {
        standings: keys.map(() => standing),
        readings: homographs.map(({ key }) => ({ key, standing })),
      };
    },
    loadFindArticle: async () => (doc) => {
      const ranges = [...(CSS.highlights.get('wr-1') ?? [])] as StaticRange[];
      wordreachTest.markedEarly = ranges.map(({ startContainer, startOffset, endOffset }) =>
        (startContainer as Text).data.slice(startOffset, endOffset),
      );
      return findArticle(doc);
    },
    loadWatchUnread: async () => watchUnreadText,
    signal: controller.signal,
    ...(scope && { scope }),
    onChange: () => {
      for (const go of waiting) go();
      waiting = [];
    },
  });
  globalThis.wordreachTest = {
    overlay,
    asked,
    refuses: false,
    markedEarly: [],
    stop: () => controller.abort(),
    nextChange: () => new Promise((resolve) => waiting.push(resolve)),
  };
  return overlay.ready;
}

function markedInPage(): string {
  const ranges = [...(CSS.highlights.get('wr-1') ?? [])] as StaticRange[];
  const shown = ranges.map(({ startContainer, startOffset, endOffset }) => ({
    node: startContainer as Text,
    start: startOffset,
    piece: (startContainer as Text).data.slice(startOffset, endOffset),
  }));
  const inOrder = shown.sort((a, b) => {
    if (a.node === b.node) return a.start - b.start;
    return a.node.compareDocumentPosition(b.node) & Node.DOCUMENT_POSITION_FOLLOWING ? -1 : 1;
  });
  return inOrder.map(({ piece }) => piece).join(' ');
}
