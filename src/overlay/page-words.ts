import { dependsOnText, isHomograph, nameOf, settleCapital, splitKey } from '../analyze/index.ts';
import type { WordKey } from '../analyze/types.ts';
import type { Shown } from '../contract/page-contract.ts';

/** A word of a page, shared by all its places, so that each place needs only one look-up. */
export interface PageWord {
  /**
   * The key, as the rest of the page settles it (`settleCapital`). A capital at the start of a sentence may turn out to
   * be the capital of a name.
   */
  readonly key: WordKey;
  /** Whether the word may have different readings in different places. */
  readonly isHomograph: boolean;
  /** The standing of the word. Undefined until it is known. */
  standing: Shown | undefined;
  /** The number of places that are read at present. */
  count: number;
}

interface SettledWord extends PageWord {
  key: WordKey;
}

/** All current and earlier words of a page, by their keys. */
export class PageWords {
  readonly #words = new Map<WordKey, SettledWord>();
  /** The words whose capitals depend on the rest of the page, by their keys before the capitals are settled. */
  readonly #open = new Map<WordKey, SettledWord>();
  /** The words that may be names by their capitals. Only these words can settle the capitals of other words. */
  readonly #names = new Set<string>();

  of(key: WordKey): PageWord {
    return this.#words.get(key) ?? this.#add(key);
  }

  #add(key: WordKey): PageWord {
    const word = { key, isHomograph: isHomograph(key), standing: undefined, count: 0 };
    this.#words.set(key, word);
    // Most keys begin with a small letter, which says nothing about names.
    if (/^[a-z]/.test(key)) return word;
    const { capital } = splitKey(key);
    if (dependsOnText(capital)) this.#open.set(key, word);
    if (!/opens|leads/.test(capital)) this.#names.add(nameOf(key));
    return word;
  }

  /** The words that are on the page now. */
  present(): PageWord[] {
    return [...this.#words.values()].filter(({ count }) => count > 0);
  }

  /** Returns the number of times that each key is on the page now. */
  counts(): Map<WordKey, number> {
    const counts = new Map<WordKey, number>();
    for (const { key, count } of this.#words.values())
      if (count > 0) counts.set(key, (counts.get(key) ?? 0) + count);
    return counts;
  }

  /**
   * Settles capitals by the words on the page now. Returns the words whose keys have changed. Their standings may have
   * to be requested.
   */
  settle(): PageWord[] {
    const countOf = (key: WordKey): number => this.#words.get(key)?.count ?? 0;
    const changed: PageWord[] = [];
    for (const [own, word] of this.#open) {
      if (word.key === own && !this.#names.has(nameOf(own))) continue;
      const key = settleCapital(own, countOf);
      if (key === word.key) continue;
      word.key = key;
      word.standing = key === own ? undefined : this.#words.get(key)?.standing;
      changed.push(word);
    }
    return changed;
  }

  /** Forgets the words that are no longer on the page. */
  forgetGone(): void {
    for (const words of [this.#words, this.#open])
      for (const [key, { count }] of words) if (count === 0) words.delete(key);
  }
}
