import { isHomograph, nameOf, settleCapital, splitKey } from '../analyze/index.ts';
import type { WordKey } from '../analyze/types.ts';
import type { Shown } from '../contract/page-contract.ts';

/** A word of a page, one for all its places, so that it is looked up once a place and no more. */
export interface PageWord {
  /** As the rest of the page settles it (`settleCapital`): a capital at the start of a sentence may turn out to be a name's. */
  readonly key: WordKey;
  /** Whether its reading may be another in another place. */
  readonly isHomograph: boolean;
  /** Undefined until it is known what the word is to the group. */
  standing: Shown | undefined;
  /** Places that are read at present. */
  count: number;
}

interface SettledWord extends PageWord {
  key: WordKey;
}

/** The words a page has or had, by their keys. */
export class PageWords {
  readonly #words = new Map<WordKey, SettledWord>();
  /** The words whose capitals the rest of the page settles, by the keys they have without it. */
  readonly #open = new Map<WordKey, SettledWord>();
  /** What may be names by their capitals: only these settle others. */
  readonly #names = new Set<string>();

  of(key: WordKey): PageWord {
    return this.#words.get(key) ?? this.#add(key);
  }

  #add(key: WordKey): PageWord {
    const word = { key, isHomograph: isHomograph(key), standing: undefined, count: 0 };
    this.#words.set(key, word);
    // Most are in small letters, which say nothing of names.
    if (/^[a-z]/.test(key)) return word;
    const { capital } = splitKey(key);
    const opens = /opens|leads/.test(capital);
    if (opens || capital === 'mid') this.#open.set(key, word);
    if (!opens) this.#names.add(nameOf(key));
    return word;
  }

  /** The words that are on the page now. */
  present(): PageWord[] {
    return [...this.#words.values()].filter(({ count }) => count > 0);
  }

  /** How often each key is on the page now. */
  counts(): Map<WordKey, number> {
    const counts = new Map<WordKey, number>();
    for (const { key, count } of this.#words.values())
      if (count > 0) counts.set(key, (counts.get(key) ?? 0) + count);
    return counts;
  }

  /** Settles capitals by the words on the page now; gives the words that have got another key, whose standing is to be asked for. */
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

  /** Forgets those that no longer are on it. */
  forgetGone(): void {
    for (const words of [this.#words, this.#open])
      for (const [key, { count }] of words) if (count === 0) words.delete(key);
  }
}
