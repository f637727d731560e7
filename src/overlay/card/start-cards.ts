import type { Standing } from '../../analyze/types.ts';
import { sayPlain } from '../../wording/say.ts';
import type { CardSources, CardWord } from './card-sources.ts';
import type { OpenCard, OpenCardFunction } from './open-card.ts';
import { isInside, watchHover } from './watch-hover.ts';

export type { CardSources, CardWord } from './card-sources.ts';

/** The word cards of one document. */
export interface Cards {
  /**
   * Opens the card of the next (1) or previous (-1) word that is not yet decodable, and moves the keyboard focus into
   * the card.
   */
  step(direction: 1 | -1): void;
  /** Opens the card of a word that the reader asked for. */
  pick(word: CardWord): void;
  /** Whether an event fell on an open card. */
  holds(event: Event): boolean;
  close(): void;
}

/**
 * The standings whose words open a card on hover. A pointer on a word of any other standing is taken to belong to a
 * reader, and opens no card.
 */
const HOVERED: ReadonlySet<Standing> = new Set(['beyond', 'unsure', 'fresh']);

export interface CardsOptions {
  readonly openCard: OpenCardFunction;
  /** Loads the function that shows cards where `openCard` cannot. */
  readonly loadPlainCard: () => Promise<OpenCardFunction>;
  /** The position of the pointer when cards were asked for. */
  readonly first?: PointerEvent | undefined;
  /** The mode of the shadow root, for tests. By default the root is closed to the page. */
  readonly mode?: ShadowRootMode;
}

export type StartCards = (doc: Document, sources: CardSources, options: CardsOptions) => Cards;

/**
 * Shows a card beside a word that the pointer rests on, a word that is picked, or the next word that a shortcut asks
 * for. Only one card is open at a time. The document has one more element while a card is open, and none when it is
 * closed.
 */
export const startCards: StartCards = (doc, sources, { mode = 'closed', ...options }) => {
  const { signal } = sources;
  const view = doc.defaultView!;
  let current: OpenCard | null = null;
  /** Whether the card stays when the pointer leaves. */
  let kept = false;
  let last: CardWord | null = null;
  let turn = 0;
  let { openCard } = options;

  async function open(word: CardWord, how: 'hover' | 'click' | 'step'): Promise<void> {
    const mine = ++turn;
    const content = await sources.explain(word.key).catch(asError);
    if (mine !== turn || signal.aborted || word.rects().length === 0) return;
    if (how === 'hover' && (content instanceof Error || !HOVERED.has(content.verdict.standing))) return;
    const back = current?.hasFocus() ? current.back : focused(doc);
    current?.close({ keepFocus: true });
    last = word;
    kept = how !== 'hover';
    const card = openCard(doc, word, content, {
      sources,
      mode,
      back,
      focus: how === 'step',
      onClosed: () => {
        if (current === card) current = null;
      },
      onKept: () => {
        kept = true;
      },
      onPointer: (isOver) => hover.follow(isOver),
      onFailed: () => {
        void options.loadPlainCard().then((plain) => {
          openCard = plain;
          if (!signal.aborted && !current) void open(word, how);
        });
      },
    });
    current = card;
  }
  function close(how?: { keepFocus: boolean }): void {
    turn++;
    current?.close(how);
  }

  const wordAt = (x: number, y: number): CardWord | null => sources.wordAt(x, y);
  const hover = watchHover(view, {
    first: options.first,
    wordAt,
    signal,
    isHeld: (event) =>
      current !== null &&
      (current.holds(event) ||
        current.word.rects().some((box) => isInside(box, event.clientX, event.clientY))),
    onRest: (word) => {
      if (!current || !kept) void open(word, 'hover');
    },
    onLeave: () => {
      if (!kept && !current?.hasFocus() && !current?.hasPointer()) close();
    },
  });
  view.addEventListener(
    'pointerdown',
    (event) => {
      if (current?.holds(event)) kept = true;
      else close({ keepFocus: true });
    },
    { capture: true, passive: true, signal },
  );
  view.addEventListener(
    'keydown',
    (event) => {
      if (event.key !== 'Escape' || !event.isTrusted || !current) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      close();
    },
    { capture: true, signal },
  );
  signal.addEventListener('abort', () => close(), { once: true });

  return {
    step(direction) {
      const word = sources.next(current?.word ?? last, direction);
      if (word) void open(word, 'step');
    },
    pick: (word) => void open(word, 'click'),
    holds: (event) => current?.holds(event) ?? false,
    close: () => close(),
  };
};

/** Returns the element that has the keyboard focus. The search includes open shadow roots. */
function focused(doc: Document): Element | null {
  let at = doc.activeElement;
  while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
  return at;
}

function asError(error: unknown): Error {
  return error instanceof Error ? error : new Error(sayPlain('card.nothingKnown'));
}
