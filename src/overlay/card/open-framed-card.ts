import type { CardLine, FromCard, ToCard } from '../../contract/card-contract.ts';
import type { WordAction, WordExplanation } from '../../contract/page-contract.ts';
import { say } from '../../wording/say.ts';
import { keepInPlace, seenOf } from './keep-in-place.ts';
import type { OpenCardFunction } from './open-card.ts';
import { makeElement, openHost } from './open-host.ts';
import { watchFromOutside } from './watch-from-outside.ts';

export interface FramedCardOptions {
  /**
   * Opens the extension's card page in the frame, and resolves with the line to that page. The promise may never
   * resolve when the web page admits no frame.
   */
  readonly openLine: (frame: HTMLIFrameElement) => Promise<CardLine<ToCard, FromCard>>;
  /** The time in milliseconds that a card must have been in its place before it does anything. */
  readonly rest?: number;
}

/** The time in milliseconds after which a page is taken to admit no frame of the extension. */
const FRAME_LIMIT = 4000;

/**
 * Returns the function that shows cards in a frame of the extension. No script of the page sees the text of the cards,
 * neither through the page's search nor in a selection. The page sees that there is a card, and where. A click in the
 * card counts only when the card has been in its place for a while.
 */
export function createFramedCard({ openLine, rest = 500 }: FramedCardOptions): OpenCardFunction {
  return (doc, word, first, { sources, mode, focus, back, onClosed, onKept, onPointer, onFailed }) => {
    const view = doc.defaultView!;
    const frame = makeElement(doc, 'iframe');
    frame.ariaLabel = 'Wordreach';
    frame.style.cssText = 'opacity: 0; width: 384px; height: 320px; pointer-events: none';
    const opening = openLine(frame);
    const host = openHost(doc, frame, { mode });
    const stop = new AbortController();
    const { signal } = stop;
    let line: CardLine<ToCard, FromCard> | undefined;
    const outside = watchFromOutside(host.element, frame, tellHindrance, signal);
    let isOver = false;
    let isAnswered = false;
    let isPlaced = false;
    let natural = { width: 0, height: 0 };
    let fit = { width: 0, height: 0 };
    /** The height of a card that had to be made narrower, otherwise null. */
    let grown: number | null = null;

    function tellHindrance(): void {
      line?.tell({ tell: 'hindrance', hindrance: outside.hindrance() });
    }
    function close({ keepFocus } = { keepFocus: false }): void {
      if (signal.aborted) return;
      stop.abort();
      line?.cut();
      host.remove(keepFocus ? null : back);
      onClosed();
    }
    const limit = setTimeout(() => {
      close();
      onFailed();
    }, FRAME_LIMIT);
    signal.addEventListener('abort', () => clearTimeout(limit), { once: true });

    const kept = keepInPlace(doc, word, {
      isThere: () => frame.isConnected,
      onPlace: (at) => {
        if (natural.width === 0) return;
        const isNarrower = at.width < natural.width;
        if (!isNarrower) grown = null;
        if (at.width !== fit.width || at.most !== fit.height) {
          fit = { width: at.width, height: at.most };
          line?.tell({ tell: 'fit', ...fit });
        }
        const height = isNarrower ? (grown ?? at.most) : natural.height;
        // Only inline styles of an element in a closed root are used. The page cannot hold them back or undo them.
        Object.assign(frame.style, {
          left: `${at.left}px`,
          top: `${at.top}px`,
          width: `${at.width}px`,
          height: `${Math.min(height, at.most)}px`,
          // The frame is made visible once. If the page hides the frame later, `watchFromOutside` reports that, and
          // nothing is repaired.
          ...(!isPlaced && { opacity: '', pointerEvents: '' }),
        });
        isPlaced = true;
        outside.look();
      },
      onRoom: (room) => line?.tell({ tell: 'room', room }),
      onLost: () => close(),
      signal,
    });

    function show(content: WordExplanation | Error, withFocus: boolean): void {
      line?.tell({
        tell: 'show',
        word: word.key,
        content: content instanceof Error ? null : content,
        fault: content instanceof Error ? content.message : null,
        room: seenOf(view).width,
        focus: withFocus,
      });
    }
    /**
     * Carries out the action clicked in the card, if the click can have been intended. Returns the reason when the
     * action was not done.
     */
    async function act(action: WordAction): Promise<string | null> {
      outside.look({ closely: true });
      const hindrance = outside.hindrance();
      if (hindrance) return say(hindrance === 'covered' ? 'card.covered' : 'card.onlyPanel');
      if (performance.now() - outside.restsSince() < rest) return say('card.moved');
      try {
        await sources.act(action);
        const now = await sources.explain(word.key);
        if (!signal.aborted) show(now, false);
        return null;
      } catch (error) {
        return error instanceof Error ? error.message : say('card.failed');
      }
    }
    function hear(told: FromCard): void {
      if (signal.aborted) return;
      if (!isAnswered) {
        isAnswered = true;
        clearTimeout(limit);
        // The focus moves only once the card hears keys. Keys pressed earlier, such as Escape, would be lost in the
        // frame.
        if (focus) frame.focus({ preventScroll: true });
        // When a page removes the card and puts it back, the frame loads again and the card closes. The listener is
        // added after the first answer, since Firefox reports meaningless loads before that. On a sealed-off page,
        // Firefox also reports the load of the empty document, which looks like a load of the card.
        frame.addEventListener('load', () => close(), { signal });
      }
      if (told.tell === 'size') {
        natural = told;
        kept.resize(told);
      } else if (told.tell === 'height') {
        grown = told.height;
        kept.place();
      } else if (told.tell === 'close') close();
      else if (told.tell === 'keep') onKept();
      else if (told.tell === 'over') {
        isOver = told.over;
        onPointer(isOver);
        outside.follow(isOver);
      } else if (told.tell === 'act')
        void act(told.action).then((fault) => line?.tell({ tell: 'done', fault }));
      outside.look();
    }

    void opening.then((opened) => {
      if (signal.aborted) {
        opened.cut();
        return;
      }
      line = opened;
      opened.hear(hear);
      show(first, focus);
      tellHindrance();
      sources.swaps?.(word).then(
        (swaps) => opened.tell({ tell: 'swaps', swaps }),
        () => undefined,
      );
    });
    return {
      word,
      back,
      holds: host.holds,
      hasFocus: host.hasFocus,
      hasPointer: () => isOver,
      close,
    };
  };
}
