import { fileURLToPath } from 'node:url';
import type { Locator, Page } from 'playwright-core';
import { build, type Rollup } from 'vite';
import type { WordAction, WordExplanation } from '../../src/contract/page-contract.ts';
import type { CardSources, Cards, CardWord } from '../../src/overlay/card/start-cards.ts';

/** The data that the page keeps while cards run alone in it. */
interface Holder {
  readonly cards: Cards;
  readonly stop: () => void;
  readonly acted: WordAction[];
  /** The message with which the next action fails. */
  fault: string;
  /** Lets the content of cards come, with the option `isLate`. */
  readonly serve: () => void;
}

declare global {
  var cardTest: Holder;
}

export interface CardPageOptions {
  /**
   * The explanations by word. The page does not know the effect of an action, so a test changes the explanations
   * itself.
   */
  readonly words: Readonly<Record<string, WordExplanation>>;
  readonly swaps?: Readonly<Record<string, { text: string; reads: boolean }[]>>;
  /**
   * How long a card is in place before it carries out an action, in milliseconds. `own`: the time of the shipped
   * extension. Without a value: 0.
   */
  readonly rest?: 'own';
  /** Whether the content of a card comes only once the test calls `serve`. */
  readonly isLate?: boolean;
  /** The mode of the card's root. The test can look into an open root, and so could the page. */
  readonly mode?: ShadowRootMode;
}

/** A page that runs only the word cards. Each word of `words` is an element `<w>` of the page. */
export interface CardPage {
  readonly page: Page;
  readonly card: Locator;
  /** Returns the first word of the page with this spelling. */
  word(text: string): Locator;
  /** Moves the pointer to the middle of a word. */
  pointTo(text: string): Promise<void>;
  html(): Promise<string>;
  /** Whether the page has an element of a card. */
  isOpen(): Promise<boolean>;
}

let code: Promise<string> | undefined;

/**
 * Stops the clock of a new page. Every document that the page shows gets the code of the cards, and so do the frames of
 * its cards.
 */
export async function prepareCardPage(page: Page): Promise<void> {
  code ??= bundleCards();
  await page.clock.install({ time: 0 });
  await page.clock.pauseAt(1000);
  await page.addInitScript(await code);
  await page.goto('about:blank');
}

/** Fills a page that was prepared with `html`, and starts cards for the elements `<w>` in it. */
export async function openCardPage(page: Page, html: string, options: CardPageOptions): Promise<CardPage> {
  await page.setContent(html);
  await page.evaluate(startInPage, { mode: 'open' as const, ...options });
  const card = page.frameLocator('[popover] iframe').getByRole('dialog', { name: /./ });
  const word = (text: string): Locator => page.locator('w', { hasText: new RegExp(`^${text}$`) }).first();
  return {
    page,
    card,
    word,
    pointTo: async (text) => {
      const { x, y, width, height } = (await word(text).boundingBox())!;
      await page.mouse.move(x + width / 2, y + height / 2);
    },
    html: () => page.evaluate(() => document.documentElement.outerHTML),
    isOpen: () => page.evaluate(() => document.querySelector('[popover="manual"]') !== null),
  };
}

/** Bundles only the code of the cards, as in the content script. */
export async function bundleCards(minify = false): Promise<string> {
  const entry = fileURLToPath(new URL('cards-alone.ts', import.meta.url));
  const built = (await build({
    configFile: false,
    logLevel: 'silent',
    publicDir: false,
    define: { 'process.env.NODE_ENV': '"production"' },
    oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
    build: { write: false, minify, lib: { entry, formats: ['iife'], name: 'wordreachCards' } },
  })) as Rollup.RollupOutput[];
  return built[0]!.output[0].code.replace('var wordreachCards', 'globalThis.wordreachCards');
}

function startInPage({ words, swaps, rest, isLate, mode = 'open' }: CardPageOptions): void {
  const { startCards, makeOpenCard, openPlainCard, watchAltClick } = (
    globalThis as unknown as { wordreachCards: typeof import('./cards-alone.ts') }
  ).wordreachCards;
  const controller = new AbortController();
  const judged: Record<string, WordExplanation['verdict']> = {};
  const elements = (): Element[] => [...document.querySelectorAll('w')];
  const wordOf = (element: Element): CardWord & { element: Element } => ({
    element,
    key: element.textContent!,
    rects: () => (element.isConnected ? [...element.getClientRects()] : []),
    dir: getComputedStyle(element).direction,
  });
  const sources: CardSources = {
    wordAt(x, y) {
      const over = elements().find((element) =>
        [...element.getClientRects()].some(
          ({ left, right, top, bottom }) => left <= x && x <= right && top <= y && y <= bottom,
        ),
      );
      return over ? wordOf(over) : null;
    },
    next(from, direction) {
      const all = elements();
      const at = from ? all.indexOf((from as ReturnType<typeof wordOf>).element) : -1;
      const next = all.at((at + direction) % all.length);
      next?.scrollIntoView({ block: 'center' });
      return next ? wordOf(next) : null;
    },
    explain: async (key) => {
      const known = words[key];
      if (!known) throw new Error('Nothing is known of this word.');
      return structuredClone(known);
    },
    act: async (action) => {
      if (cardTest.fault) throw new Error(cardTest.fault);
      cardTest.acted.push(action);
      const key = 'word' in action ? action.word : elements()[0]!.textContent!;
      const known = words[key] as { -readonly [F in keyof WordExplanation]: WordExplanation[F] };
      judged[key] ??= known.verdict;
      if (action.do === 'teach') known.verdict = { standing: 'reads', missing: [] };
      else if (action.do === 'unteach' || action.do === 'judged') known.verdict = judged[key];
      else known.verdict = { standing: action.do === 'skip' ? 'skipped' : action.do, missing: [] };
      if ('word' in action) known.counts = action.do;
    },
    ...(swaps && { swaps: async ({ key }: CardWord) => swaps[key] ?? [] }),
    signal: controller.signal,
  };
  let serve = (): void => undefined;
  const ready = new Promise<void>((resolve) => {
    serve = resolve;
  });
  const openCard = makeOpenCard(rest === 'own' ? undefined : 0, isLate ? ready : Promise.resolve());
  const cards = startCards(document, sources, { openCard, loadPlainCard: async () => openPlainCard, mode });
  watchAltClick(window, {
    wordAt: sources.wordAt,
    isHeld: cards.holds,
    onPick: cards.pick,
    signal: controller.signal,
  });
  globalThis.cardTest = {
    cards,
    stop: () => controller.abort(),
    acted: [],
    fault: '',
    serve,
  };
}
