import { settleCounts, tokenize } from '../analyze/index.ts';
import type { Tally, WordKey } from '../analyze/types.ts';
import { FileFault } from '../passage/files/file-fault.ts';

/**
 * The approximate size of a part, in characters. A long text is split into such parts between paragraphs, so that its
 * tokens do not fill the memory.
 */
const PART = 65_536;
/** The length from which V8 no longer copies a slice. Such a slice would keep the whole text in memory for one word. */
const SLICE = 13;

/** Counts how often each word occurs in a text, and how many tokens are skipped. */
export function countWords(text: string): { words: ReadonlyMap<WordKey, number>; skipped: number } {
  const words = new Map<WordKey, number>();
  let skipped = 0;
  for (let start = 0, end = 0; start < text.length; start = end) {
    const blank = text.indexOf('\n\n', start + PART);
    end = blank === -1 ? text.length : blank + 2;
    for (const { kind, key } of tokenize(text.slice(start, end))) {
      const count = words.get(key);
      if (kind === 'skipped') skipped++;
      else if (count !== undefined) words.set(key, count + 1);
      else words.set(key.length < SLICE ? key : copyOf(key), 1);
    }
  }
  return { words: settleCounts(words), skipped };
}

/** Returns the same counts. Throws `FileFault` if there are no words: the share of an empty text would be 100%. */
export function expectWords<C extends { readonly words: ReadonlyMap<WordKey, number> }>(counts: C): C {
  if (counts.words.size === 0)
    throw new FileFault('There are no words in this text. Check that it is the one you meant.');
  return counts;
}

/** Returns the percentage of a text that can be read. Null if the text has no words except names. */
export function shareOf({ running, reach }: Tally): number | null {
  return running === 0 ? null : reach;
}

function copyOf(key: WordKey): WordKey {
  return Buffer.from(key, 'utf16le').toString('utf16le');
}
