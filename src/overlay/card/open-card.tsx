import { render } from 'preact';
import type { WordExplanation } from '../../contract/page-contract.ts';
import type { CardSources, CardWord } from './card-sources.ts';
import { CardView } from './card-view.tsx';
import { openHost } from './open-host.ts';
import { type Box, placeCard, type Side } from './place-card.ts';
import { speakWord } from './speak-word.ts';

/** The card keeps so far from the edge of the view, in CSS pixels. */
const EDGE = 8;

/** A card that is shown. */
export interface OpenCard {
  readonly word: CardWord;
  /** Where the keyboard goes when the card closes. */
  readonly back: Element | null;
  /** Whether an event fell on the card. */
  holds(event: Event): boolean;
  hasFocus(): boolean;
  /** Takes the card away; the keyboard goes back where it was unless `keepFocus`. */
  close(how?: { keepFocus: boolean }): void;
}

interface OpenCardOptions {
  readonly sources: CardSources;
  readonly mode: ShadowRootMode;
  /** Whether the keyboard goes into the card. */
  readonly focus: boolean;
  readonly back: Element | null;
  readonly onClosed: () => void;
}

export type OpenCardFunction = typeof openCard;

/** Shows a card beside a word and keeps it there until the word is gone, out of view, or the card is closed. */
export function openCard(
  doc: Document,
  word: CardWord,
  first: WordExplanation | Error,
  { sources, mode, focus, back, onClosed }: OpenCardOptions,
): OpenCard {
  const view = doc.defaultView!;
  const host = openHost(doc, mode);
  const { sheet } = host;
  const stop = new AbortController();
  const rtl = (word.dir ?? view.getComputedStyle(doc.documentElement).direction) === 'rtl';
  const swaps = sources.swaps && ((of: CardWord) => sources.swaps!(of));
  let size = { width: 0, height: 0 };
  let side: Side | undefined;
  let wasInView = false;
  let frame = 0;

  function measure(): void {
    const body = sheet.firstElementChild;
    const scrolled = body?.scrollTop ?? 0;
    sheet.style.width = '';
    sheet.style.maxHeight = '';
    size = sheet.getBoundingClientRect();
    place();
    if (body) body.scrollTop = scrolled;
  }

  function place(): void {
    if (stop.signal.aborted) return;
    const boxes = sheet.isConnected ? word.rects() : [];
    const seen = seenOf(view);
    const inView = boxes.some((box) => meet(box, seen));
    if (boxes.length === 0 || (wasInView && !inView)) {
      close();
      return;
    }
    wasInView ||= inView;
    const at = placeCard({ word: boxes, card: size, view: seen, rtl, ...(side && { prefer: side }) });
    side = at.side;
    sheet.style.left = `${at.left}px`;
    sheet.style.top = `${at.top}px`;
    sheet.style.width = at.width < size.width ? `${at.width}px` : '';
    // Made narrower it grows longer, but not out of the view.
    const room = seen.top + seen.height - at.top - EDGE;
    sheet.style.maxHeight = `${Math.min(at.height < size.height ? at.height : room, room)}px`;
  }

  function soon(): void {
    if (!sheet.isConnected) close();
    cancelAnimationFrame(frame);
    frame = requestAnimationFrame(place);
  }

  function close({ keepFocus } = { keepFocus: false }): void {
    if (stop.signal.aborted) return;
    stop.abort();
    cancelAnimationFrame(frame);
    const hadFocus = host.hasFocus();
    render(null, sheet);
    host.remove();
    if (hadFocus && !keepFocus && back?.isConnected) (back as HTMLElement).focus({ preventScroll: true });
    onClosed();
  }

  function show(content: WordExplanation | Error): void {
    render(
      <CardView
        word={word}
        content={content}
        swaps={swaps}
        onAct={async (action) => {
          await sources.act(action);
          const hadFocus = host.hasFocus();
          const now = await sources.explain(word.key);
          if (stop.signal.aborted) return;
          show(now);
          // The button that was pressed may be there no more.
          if (hadFocus && !host.hasFocus()) sheet.focus();
        }}
        onSpeak={async (text) =>
          sources.speak
            ? sources.speak(text)
            : speakWord(text, content instanceof Error ? 'american' : content.sounds?.accent)
        }
        onClose={() => close()}
        onResize={measure}
      />,
      sheet,
    );
  }

  sheet.tabIndex = -1;
  sheet.setAttribute('role', 'dialog');
  sheet.setAttribute('aria-labelledby', 'word');
  sheet.setAttribute('aria-describedby', 'standing');
  show(first);
  if (focus) sheet.focus({ preventScroll: true });

  const { signal } = stop;
  view.addEventListener('scroll', soon, { capture: true, passive: true, signal });
  view.addEventListener('resize', measure, { signal });
  view.visualViewport?.addEventListener('scroll', soon, { signal });
  view.visualViewport?.addEventListener('resize', measure, { signal });
  const mutations = new MutationObserver(soon);
  mutations.observe(doc, { childList: true, characterData: true, subtree: true });
  signal.addEventListener('abort', () => mutations.disconnect(), { once: true });
  return { word, back, holds: host.holds, hasFocus: host.hasFocus, close };
}

/** What is seen of the page: less than the window where it is pinched larger. */
function seenOf(view: Window): Box {
  const { visualViewport: seen } = view;
  if (!seen) return { left: 0, top: 0, width: view.innerWidth, height: view.innerHeight };
  return { left: seen.offsetLeft, top: seen.offsetTop, width: seen.width, height: seen.height };
}

function meet(a: Box, b: Box): boolean {
  return (
    a.left < b.left + b.width &&
    b.left < a.left + a.width &&
    a.top < b.top + b.height &&
    b.top < a.top + a.height
  );
}
