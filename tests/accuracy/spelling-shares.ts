import type { Analyzer } from '../../src/analyze/index.ts';
import type { Unit } from '../../src/analyze/types.ts';

/** Words with the units of their usual reading. Endings are separate units. */
export type UnitLists = readonly { readonly word: string; readonly units: readonly Unit[] }[];

export function unitLists(words: Iterable<string>, analyzer: Analyzer): UnitLists {
  return [...words].flatMap((word) => {
    const [reading] = analyzer.analyze(word).readings;
    return reading && reading.source !== 'none' ? [{ word, units: reading.units }] : [];
  });
}

/**
 * Returns how a sound is spelt: each spelling with its share, the commonest first. A final -y and the split vowels
 * count as separate spellings. Affixes are left out.
 */
export function spellingShares(lists: UnitLists, sounds: ReadonlySet<string>): Map<string, number> {
  const counts = new Map<string, number>();
  let total = 0;
  for (const { units } of lists) {
    for (const { letters, sound, affix } of units) {
      if (affix || !sounds.has(sound)) continue;
      counts.set(letters, (counts.get(letters) ?? 0) + 1);
      total++;
    }
  }
  return new Map([...counts].sort((a, b) => b[1] - a[1]).map(([letters, count]) => [letters, count / total]));
}

/**
 * Returns the percentage of words for which a generalisation holds, among the words in which `applies` finds the
 * letters.
 */
export function utility(
  lists: UnitLists,
  applies: (word: string, units: readonly Unit[]) => Unit | undefined,
  holds: (unit: Unit) => boolean,
): number {
  let [met, kept] = [0, 0];
  for (const { word, units } of lists) {
    const unit = applies(word, units);
    if (!unit) continue;
    met++;
    if (holds(unit)) kept++;
  }
  return Math.round((kept / met) * 100);
}
