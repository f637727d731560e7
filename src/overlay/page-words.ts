import { isHomograph } from '../analyze/index.ts';
import type { Standing, WordKey } from '../analyze/types.ts';

/** A word of a page, one for all its places, so that it is looked up once a place and no more. */
export interface PageWord {
  readonly key: WordKey;
  /** Whether its reading may be another in another place. */
  readonly isHomograph: boolean;
  /** Undefined until it is known what the word is to the group. */
  standing: Standing | undefined;
  /** Places that are read at present. */
  count: number;
}

/** The words a page has or had, by their keys. */
export class PageWords {
  readonly #words = new Map<WordKey, PageWord>();

  of(key: WordKey): PageWord {
    const known = this.#words.get(key);
    if (known) return known;
    const word = { key, isHomograph: isHomograph(key), standing: undefined, count: 0 };
    this.#words.set(key, word);
    return word;
  }

  /** Those that stand on the page now. */
  present(): PageWord[] {
    return [...this.#words.values()].filter(({ count }) => count > 0);
  }

  /** Forgets those that no longer stand on it. */
  forgetGone(): void {
    for (const { key, count } of this.#words.values()) if (count === 0) this.#words.delete(key);
  }
}
