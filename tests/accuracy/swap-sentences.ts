import { readFileSync } from 'node:fs';

export interface SwapSentence {
  readonly sentence: string;
  readonly start: number;
  readonly end: number;
  /** Every swap that counts as right. */
  readonly right: readonly string[];
}

/**
 * Reads `tests/words/swap-*.tsv`. Each line has the sentence with its word in square brackets, a tab, and the swaps
 * separated by bars.
 */
export function readSwapSentences(name: string): SwapSentence[] {
  const content = readFileSync(new URL(`../words/${name}.tsv`, import.meta.url), 'utf8');
  return content
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'))
    .map((line) => {
      const [marked, right] = line.split('\t') as [string, string];
      const start = marked.indexOf('[');
      const end = marked.indexOf(']') - 1;
      return { sentence: marked.replace(/[[\]]/g, ''), start, end, right: right.split('|') };
    });
}
