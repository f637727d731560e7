import { rememberFor } from '../../analyze/index.ts';
import type { Pattern, PatternId, Reading, WordAnalysis } from '../../analyze/types.ts';

/** The share of the words with a pattern below which a place is not named. */
const SELDOM = 0.08;

/**
 * Returns where a spelling is in a word, for an adult to say: `in the middle or at the end of a word`. The text comes
 * from the catalogue. If the catalogue gives none, places are counted in the base words of the list (in words of one
 * syllable where there are enough) and in the words shown. Returns an empty text where neither gives a place.
 */
export function placesOf(
  { id, where, family }: Pattern,
  analyses: readonly WordAnalysis[],
  shown: readonly Reading[] = [],
): string {
  if (where !== '') return where;
  if (family === 'suffix') return 'at the end of a base word';
  if (family === 'prefix') return 'at the start of a base word';
  if (family === 'vowel-consonant-e') return 'before one consonant and a silent e';
  const counts = placesIn(analyses).get(id);
  if (!counts) return '';
  const total = counts.reduce((sum, count) => sum + count, 0);
  const names = ['at the start', 'in the middle', 'at the end'].filter(
    (_, i) =>
      counts[i]! / total >= SELDOM ||
      shown.some(({ units }) => units.some((unit, at) => unit.pattern === id && placeAt(at, units) === i)),
  );
  return names.length === 3
    ? 'at the start, in the middle or at the end of a word'
    : `${names.join(' or ')} of a word`;
}

/** Returns 0 for the first unit, 1 for a unit inside the word, 2 for the last unit. */
function placeAt(at: number, units: Reading['units']): number {
  return at === 0 ? 0 : at === units.length - 1 ? 2 : 1;
}

/**
 * With at least this many short words, longer words are not counted, because a spelling may be at the end of a syllable
 * in them: the ay of crayon.
 */
const ENOUGH_SHORT = 5;

const placesIn = rememberFor(countPlaces);

function countPlaces(analyses: readonly WordAnalysis[]): Map<PatternId, number[]> {
  const short = countIn(analyses.filter(({ readings }) => readings[0]!.syllables.length === 1));
  const all = countIn(analyses);
  for (const [id, counts] of short)
    if (counts.reduce((sum, count) => sum + count, 0) >= ENOUGH_SHORT) all.set(id, counts);
  return all;
}

function countIn(analyses: readonly WordAnalysis[]): Map<PatternId, number[]> {
  const all = new Map<PatternId, number[]>();
  for (const { readings } of analyses) {
    const { units, affixes } = readings[0]!;
    if (affixes.length > 0) continue;
    for (const [i, { pattern }] of units.entries()) {
      const counts = all.get(pattern) ?? [0, 0, 0];
      counts[placeAt(i, units)]!++;
      all.set(pattern, counts);
    }
  }
  return all;
}
