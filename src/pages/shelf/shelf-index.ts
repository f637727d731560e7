import { createWordNumbers, type NumberedWords, numberWords, type WordNumbers } from '../../analyze/index.ts';
import type { ShelfText } from '../../host/store/shelf-store.ts';

/** A text as this page holds it in memory, with the numbers of its words and the string for the search. */
export interface IndexedText extends Omit<ShelfText, 'words'> {
  readonly words: NumberedWords;
  /** Title, tags, notes, address and author, in lower case. */
  readonly searched: string;
}

/**
 * All texts of the shelf in memory. A change creates a new `texts` array, so that components which show it notice the
 * change.
 */
export interface ShelfIndex {
  readonly texts: readonly IndexedText[];
  readonly numbers: WordNumbers;
  /** Adds texts. A text with the same id is replaced. */
  put(texts: readonly ShelfText[]): void;
  delete(ids: readonly string[]): void;
  /** Returns the words of a text with their counts, as needed for a report. */
  countsOf(text: IndexedText): Pick<ShelfText, 'words' | 'skipped'>;
}

/** Creates an empty index. */
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

/** Returns a text whose words are numbers of an index. The text itself need not be in the index. */
export function indexText({ words, ...text }: ShelfText, numbers: WordNumbers): IndexedText {
  const { title, tags, notes, url, byline } = text;
  return {
    ...text,
    words: numberWords(words, numbers),
    searched: [title, ...tags, notes, url ?? '', byline ?? ''].join('\n').toLowerCase(),
  };
}
