import { settleCounts, tokenize } from '../analyze/index.ts';
import type { Tally, WordKey } from '../analyze/types.ts';
import { FileFault } from '../passage/files/file-fault.ts';

/** A long text is cut in parts of about this many characters, between paragraphs: its tokens fill no memory. */
const PART = 65_536;
/** V8 copies a shorter slice; a longer one would keep the whole text alive for one word of it. */
const SLICE = 13;

/** How often a text has each word, and how many tokens are no words to read. */
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

/** The same counts. Throws `FileFault` when there is nothing in them to read: a share of nothing would say 100%. */
export function expectWords<C extends { readonly words: ReadonlyMap<WordKey, number> }>(counts: C): C {
  if (counts.words.size === 0)
    throw new FileFault('There are no words in this text. Check that it is the one you meant.');
  return counts;
}

/** The share of a text that can be read, in percent; null where no word but names is in it. */
export function shareOf({ running, reach }: Tally): number | null {
  return running === 0 ? null : reach;
}

function copyOf(key: WordKey): WordKey {
  return Buffer.from(key, 'utf16le').toString('utf16le');
}
