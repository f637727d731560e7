import type { WordKey } from '../../analyze/types.ts';
import {
  type CardAction,
  type CardContent,
  type CardSources,
  type CardSwap,
  type CardWord,
  startCards,
} from '../card/start-cards.ts';
import type { ScopeKind } from '../choose-scope.ts';
import type { WordPlace } from '../find-places.ts';
import type { WordInSentence } from '../find-sentence.ts';
import { boxesOf } from '../find-word.ts';
import type { Look } from '../mark-rules.ts';
import type { JudgeWords } from '../read-page.ts';
import { type OverlayWords, startOverlay } from '../start-overlay.ts';
import type { TakenPassage } from '../take-passage.ts';
import type { PageParts } from './page-parts.ts';

export interface PageOptions {
  readonly judge: JudgeWords;
  readonly explain: (key: WordKey) => Promise<CardContent>;
  readonly act: (action: CardAction) => Promise<void>;
  readonly swaps: (word: WordInSentence) => Promise<readonly CardSwap[]>;
  readonly bring: <N extends keyof PageParts>(part: N) => Promise<PageParts[N]>;
  readonly onChange: () => void;
  /** Aborting leaves the page as it was. */
  readonly signal: AbortSignal;
}

/** The shading of one page with its word cards. */
export interface ShadedPage {
  /** Settles when the page has been read once. */
  readonly ready: Promise<void>;
  words(): OverlayWords;
  rejudge(): Promise<void>;
  /** Shows the n-th place of a word, if there are so many; gives their number. */
  goTo(place: { key: WordKey; n: number }): number;
  /** The sentence of the n-th place of a word; null when it is nowhere. */
  sentence(place: { key: WordKey; n: number }): WordInSentence | null;
  /** Checks another text of the page; gives the one that is checked then. */
  setScope(kind: ScopeKind): Promise<ScopeKind>;
  /** Opens the card of the next (1) or previous (-1) word that is not yet decodable. */
  step(direction: 1 | -1): void;
  setLook(look: Look): void;
  /** The text that is checked, line by line. */
  takePassage(): Promise<TakenPassage>;
}

/** Starts shading and cards in a document. */
export function startPage(
  doc: Document,
  { explain, act, swaps, bring, ...options }: PageOptions,
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
      const place = overlay.finder.next(
        from ? (places.get(from) ?? null) : null,
        direction,
        (other) => overlay.standingOf(other) === 'beyond',
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
