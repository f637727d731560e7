import type { PatternId, WordAnalysis } from '../types.ts';

/**
 * Returns the patterns that any reading of a word needs. If the readings are different words, only the patterns common
 * to all count. The set is empty if nothing is known for sure.
 */
export type WordNeeds = (word: string) => ReadonlySet<PatternId>;

const nothing: ReadonlySet<PatternId> = new Set();

/** Without an engine nothing is known about any word. */
export const noNeeds: WordNeeds = () => nothing;

/** Senses that a list of examples does not distinguish: dog has the o of pot for people who merge the two. */
const alike: Readonly<Record<PatternId, PatternId>> = {
  'o-aw': 'short-o',
  'start-other': 'start-thr',
  'al-ah': 'al-aw',
  'weak-e': 'long-e',
};

/** Plans list the or of forget with fork and the ar of particular with farm. Doctor and dollar show the weak sounds. */
const strong: Readonly<Record<PatternId, PatternId>> = { 'or-weak': 'or', 'ar-weak': 'ar' };
const endsWeak = /(?:ar|or)(?:s|d|ds|n|ns)?$/i;

/** Asks an engine once for each word. Readings that come only from a rule or a guess are not used. */
export function createWordNeeds(engine: { analyze(word: string): WordAnalysis }): WordNeeds {
  const known = new Map<string, ReadonlySet<PatternId>>();
  return (word) => {
    const before = known.get(word);
    if (before !== undefined) return before;
    const { readings, homograph } = engine.analyze(word);
    const sets = readings
      .filter(({ source }) => source === 'dictionary' || source === 'derived')
      .map(({ requires, units, fine }) => [
        ...requires,
        ...units.map(({ pattern }) => pattern),
        ...(fine?.finer.map(({ row }) => row) ?? []),
      ]);
    // A pattern in only one reading of row is no evidence, because the other reading may be meant.
    const all = [...new Set(sets.flat())].filter((id) => !homograph || sets.every((one) => one.includes(id)));
    const ids = all.map((id) => (id in strong && !endsWeak.test(word) ? strong[id]! : id));
    const needs = new Set([...ids, ...ids.flatMap((id) => alike[id] ?? [])]);
    known.set(word, needs);
    return needs;
  };
}
