import type { PatternId, WordAnalysis } from '../types.ts';

/** What a word needs to be read, in any of its readings, or in all where they are different words; empty where nothing is known of it for sure. */
export type WordNeeds = (word: string) => ReadonlySet<PatternId>;

const nothing: ReadonlySet<PatternId> = new Set();

/** Without an engine no word says anything. */
export const noNeeds: WordNeeds = () => nothing;

/** Senses that a list of examples does not tell apart: dog has the o of pot for whoever merges the two. */
const alike: Readonly<Record<PatternId, PatternId>> = {
  'o-aw': 'short-o',
  'start-other': 'start-thr',
  'al-ah': 'al-aw',
  'weak-e': 'long-e',
};

/** The or of forget and the ar of particular are those of fork and farm to whoever lists them; doctor and dollar show the weak ones. */
const strong: Readonly<Record<PatternId, PatternId>> = { 'or-weak': 'or', 'ar-weak': 'ar' };
const endsWeak = /(?:ar|or)(?:s|d|ds|n|ns)?$/i;

/** Asks an engine once for each word; what it guesses or reads by rule says nothing. */
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
    // What one reading of row needs is no evidence: the other may be meant.
    const all = [...new Set(sets.flat())].filter((id) => !homograph || sets.every((one) => one.includes(id)));
    const ids = all.map((id) => (id in strong && !endsWeak.test(word) ? strong[id]! : id));
    const needs = new Set([...ids, ...ids.flatMap((id) => alike[id] ?? [])]);
    known.set(word, needs);
    return needs;
  };
}
