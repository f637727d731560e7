import { createWordNumbers, type NumberedWords, numberWords, type WordNumbers } from '../../analyze/index.ts';
import type { ShelfText } from '../../host/store/shelf-store.ts';

/** A text as the page holds it: with its words by their numbers, and what a search looks into. */
export interface IndexedText extends Omit<ShelfText, 'words'> {
  readonly words: NumberedWords;
  /** Title, tags, notes, address and author in lower case. */
  readonly searched: string;
}

/** All texts of the shelf in memory. A change makes a new `texts`, so that who shows it notices. */
export interface ShelfIndex {
  readonly texts: readonly IndexedText[];
  readonly numbers: WordNumbers;
  /** Puts texts in, in the place of those with the same id. */
  put(texts: readonly ShelfText[]): void;
  delete(ids: readonly string[]): void;
  /** The words of a text with their counts, as they are reported on. */
  countsOf(text: IndexedText): Pick<ShelfText, 'words' | 'skipped'>;
}

/** An index of nothing yet. */
export function createShelfIndex(): ShelfIndex {
  const numbers = createWordNumbers();
  const byId = new Map<string, IndexedText>();
  let texts: readonly IndexedText[] = [];
  return {
    numbers,
    get texts() {
      return texts;
    },
    put(more) {
      for (const text of more) byId.set(text.id, indexText(text, numbers));
      texts = [...byId.values()];
    },
    delete(ids) {
      for (const id of ids) byId.delete(id);
      texts = [...byId.values()];
    },
    countsOf: ({ words, skipped }) => ({
      words: Array.from(
        { length: words.length / 2 },
        (_, i) => [numbers.keys[words[i * 2]!]!, words[i * 2 + 1]!] as const,
      ),
      skipped,
    }),
  };
}

/** A text with its words by the numbers of an index, in which it need not be. */
export function indexText({ words, ...text }: ShelfText, numbers: WordNumbers): IndexedText {
  const { title, tags, notes, url, byline } = text;
  return {
    ...text,
    words: numberWords(words, numbers),
    searched: [title, ...tags, notes, url ?? '', byline ?? ''].join('\n').toLowerCase(),
  };
}
