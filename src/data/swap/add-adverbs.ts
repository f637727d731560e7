import type { OwnSwaps } from './read-own-swaps.ts';

/**
 * Returns our own swaps with added adverbs. An adverb in -ly without a row takes the swaps of its adjective, turned
 * into adverbs. timid has the swaps shy and afraid, so timidly gets shyly. Adverbs that `isAdverb` does not know are
 * left out: afraidly.
 */
export function addAdverbs(own: readonly OwnSwaps[], isAdverb: (word: string) => boolean): OwnSwaps[] {
  const listed = new Set(own.filter(({ part }) => part === 'r').map(({ word }) => word));
  const added = new Map<string, OwnSwaps>();
  for (const { word, part, swaps, marks } of own) {
    const adverb = adverbOf(word);
    if (part !== 'a' || listed.has(adverb) || added.has(adverb) || !isAdverb(adverb)) continue;
    const made = swaps
      .map((swap, i) => ({ swap: adverbOf(swap), mark: marks[i]! }))
      .filter(({ swap }) => swap !== adverb && isAdverb(swap));
    if (made.length === 0) continue;
    added.set(adverb, {
      word: adverb,
      part: 'r',
      swaps: made.map(({ swap }) => swap),
      marks: made.map(({ mark }) => mark),
      cues: [],
    });
  }
  return [...own, ...added.values()];
}

function adverbOf(adjective: string): string {
  if (/[^aeiou]le$/.test(adjective)) return adjective.replace(/e$/, 'y');
  if (/[aeiou].*[^aeiou]y$/.test(adjective)) return adjective.replace(/y$/, 'ily');
  return adjective + (adjective.endsWith('ic') ? 'ally' : 'ly');
}
