import type { PageOptions, ShadedPage } from '../../contract/page-contract.ts';
import { type CardSources, type CardWord, startCards } from '../card/start-cards.ts';
import type { WordPlace } from '../find-places.ts';
import { boxesOf } from '../find-word.ts';
import { startOverlay } from '../start-overlay.ts';
import type { PageParts } from './page-parts.ts';

/** Starts shading and cards in a document. */
export function startPage(
  doc: Document,
  { explain, act, swaps, bring, ...options }: PageOptions<PageParts>,
): ShadedPage {
  const overlay = startOverlay(doc, { ...options, loadFindArticle: () => bring('article') });
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
  const cards = startCards(doc, sources, () => bring('card'));
  return { ...overlay, step: cards.step };
}
