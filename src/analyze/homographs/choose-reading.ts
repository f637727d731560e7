import { contextFeatures, TOPIC } from './context-features.ts';
import { settleByRule } from './settle-by-rule.ts';
import weights from './weights.json' with { type: 'json' };

/** A reading by its place among the readings of the word, and how sure it is: log odds, 0 is a toss-up. */
export interface Choice {
  readonly reading: number;
  readonly margin: number;
}

/** What was learnt of one word: tenths of log odds for its second reading (reading 1). */
export interface WordWeights {
  /** Which reading is a verb, when the other is none: what holds for all verbs then counts as well. */
  readonly verb?: number;
  readonly bias: number;
  readonly own: Readonly<Record<string, number>>;
}

/** What was learnt of all words; features are those of `contextFeatures`. */
export interface Weights {
  readonly verb: Readonly<Record<string, number>>;
  readonly words: Readonly<Record<string, WordWeights>>;
}

/** Tells the reading of a word from the pieces before and after it (see `readContext`); null for other words. */
export type Chooser = (word: string, before: readonly string[], after: readonly string[]) => Choice | null;

/** A margin from which a choice is right in 98 of 100 places (tests/accuracy/measure-homographs.ts). */
export const SURE = 2;

/**
 * Chooses by rule where one is sure, else by learnt weights: what speaks for a verb in general, and what speaks
 * for this word's second reading.
 * A plural or -s form that was not learnt (records) is taken as its base form.
 */
export function createChooser({ verb, words }: Weights): Chooser {
  const learnt = new Map(
    Object.entries(words).map(([word, known]) => [word, { ...known, own: mapOf(known.own) }]),
  );
  const ofVerbs = mapOf(verb);
  const find = (word: string) => {
    const own = learnt.get(word);
    if (own || !word.endsWith('s')) return own;
    const base = learnt.get(word.slice(0, -1));
    return base?.verb === undefined ? undefined : base;
  };
  return (word, before, after) => {
    const settled = settleByRule(word, before, after);
    if (settled !== null) return { reading: settled, margin: Number.POSITIVE_INFINITY };
    const known = find(word.toLowerCase());
    if (!known) return null;
    const turn = known.verb === undefined ? 0 : known.verb === 1 ? 1 : -1;
    let score = known.bias;
    for (const feature of contextFeatures(word, before, after)) {
      score += known.own.get(feature) ?? 0;
      if (turn !== 0 && !feature.startsWith(TOPIC)) score += turn * (ofVerbs.get(feature) ?? 0);
    }
    return { reading: score > 0 ? 1 : 0, margin: Math.abs(score) / 10 };
  };
}

/** Features are strings put together for the moment, which a map finds far sooner than an object does. */
function mapOf(weights: Readonly<Record<string, number>>): ReadonlyMap<string, number> {
  return new Map(Object.entries(weights));
}

let chooser: Chooser | undefined;

/** The reading a homograph has in its place: they `read` the map today, she `read` it last night. */
export const chooseReading: Chooser = (word, before, after) => {
  chooser ??= createChooser(weights);
  return chooser(word, before, after);
};
