import type { PageOptions, ShadedPage } from '../../contract/page-contract.ts';
import type { CardSources, Cards, CardWord } from '../card/start-cards.ts';
import { watchAltClick } from '../card/watch-alt-click.ts';
import type { WordPlace } from '../find-places.ts';
import { boxesOf } from '../find-word.ts';
import { startOverlay } from '../start-overlay.ts';
import type { PageParts } from './page-parts.ts';

/** Starts shading and cards in a document. */
export function startPage(
  doc: Document,
  { explain, act, swaps, bring, ...options }: PageOptions<PageParts>,
): ShadedPage {
  const overlay = startOverlay(doc, {
    ...options,
    loadFindArticle: () => bring('article'),
    loadVeil: () => bring('veil'),
    loadWatchUnread: () => bring('unread'),
  });
  const places = new WeakMap<CardWord, WordPlace>();
  function cardWord(place: WordPlace | null): CardWord | null {
    const element = place?.ranges[0]?.startContainer.parentElement;
    if (!place || !element) return null;
    const word: CardWord = {
      key: place.key,
      rects: () => boxesOf(place),
      dir: getComputedStyle(element).direction,
    };
    places.set(word, place);
    return word;
  }
  const sources: CardSources = {
    wordAt: (x, y) => cardWord(overlay.finder.at(x, y)),
    next: (from, direction) => {
      const place = overlay.finder.next(from ? (places.get(from) ?? null) : null, direction, (other) =>
        /beyond|soon/.test(overlay.standingOf(other) ?? ''),
      );
      if (place) overlay.pointAt(place);
      return cardWord(place);
    },
    explain,
    act,
    swaps: async (word) => {
      const place = places.get(word);
      const inSentence = place ? overlay.sentenceOf(place) : null;
      return inSentence ? swaps(inSentence) : [];
    },
    signal: options.signal,
  };
  return { ...overlay, step: startCardsLater(doc, sources, bring) };
}

/**
 * Loads the part that shows cards as soon as the reader moves the pointer, and returns the `step` function of the
 * cards.
 */
function startCardsLater(
  doc: Document,
  sources: CardSources,
  bring: PageOptions<PageParts>['bring'],
): Cards['step'] {
  let first: PointerEvent | undefined;
  let cards: Promise<Cards | undefined> | undefined;
  let shown: Cards | undefined;
  function start(): Promise<Cards | undefined> {
    cards ??= bring('card').then(
      (show) => {
        if (!sources.signal.aborted)
          shown ??= show(doc, sources, { first, loadPlainCard: () => bring('plain-card') });
        return shown;
      },
      () => {
        cards = undefined;
        return cards;
      },
    );
    return cards;
  }
  // A reader who moves the pointer may be about to follow a link. When the reader comes back, the page is still shaded,
  // but no script can be put into it any more.
  const options = { passive: true, capture: true, signal: sources.signal };
  addEventListener(
    'pointermove',
    (event) => {
      first = event;
      void start();
    },
    options,
  );
  addEventListener('keydown', start, options);
  watchAltClick(doc.defaultView!, {
    wordAt: sources.wordAt,
    isHeld: (event) => shown?.holds(event) ?? false,
    onPick: (word) => void start().then((cards) => cards?.pick(word)),
    signal: sources.signal,
  });
  return (direction) => void start().then((cards) => cards?.step(direction));
}
