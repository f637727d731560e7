import { contextFeatures, TOPIC } from './context-features.ts';
import { settleByRule } from './settle-by-rule.ts';
import weights from './weights.json' with { type: 'json' };

/** A reading by its place among the readings of the word, and how sure it is: log odds, 0 is a toss-up. */
export interface Choice {
  readonly reading: number;
  readonly margin: number;
}

/**
 * A question that many words share: is it a verb (use) or noun or adjective, a verb with -s (uses) or a plural, a past or participle
 * (wound) or noun or adjective, past or present (read)?
 */
export type Question = 'verb' | 'verb with s' | 'past' | 'tense';

/** The weights of one word: tenths of log odds for its second reading (reading 1). */
export interface WordWeights {
  /** What holds for all words of that question then counts as well. */
  readonly question?: Question;
  /** The reading that is the verb or past of the question. */
  readonly yes?: number;
  readonly bias: number;
  readonly own: Readonly<Record<string, number>>;
}

/** All weights; features come from `contextFeatures`. */
export interface Weights {
  readonly questions: Readonly<Record<Question, Readonly<Record<string, number>>>>;
  /** How much words of a topic tell, for all words that have topics. */
  readonly topics: Readonly<Record<string, number>>;
  readonly words: Readonly<Record<string, WordWeights>>;
}

/** Tells the reading of a word from the pieces before and after it (see `readContext`); null for other words. */
export type Chooser = (word: string, before: readonly string[], after: readonly string[]) => Choice | null;

/** A margin from which a choice is right in 98.5 of 100 places (tests/accuracy/measure-homographs.ts). */
export const SURE = 1.5;

/**
 * Chooses by rule where one is sure, else by learnt weights: what speaks for a verb in general, and what speaks
 * for this word's second reading.
 * A plural or -s form that was not learnt (records) is taken as its base form, and asked whether it is a verb with s.
 */
export function createChooser({ questions, topics, words }: Weights): Chooser {
  const learnt = new Map(
    Object.entries(words).map(([word, known]) => [word, { ...known, own: mapOf(known.own) }]),
  );
  const shared = new Map(Object.entries(questions).map(([name, all]) => [name, mapOf(all)]));
  const ofTopics = mapOf(topics);
  const find = (word: string) => {
    const own = learnt.get(word);
    if (own || !word.endsWith('s')) return own;
    const base = learnt.get(word.slice(0, -1));
    return base?.question === 'verb' ? { ...base, question: 'verb with s' as const } : undefined;
  };
  return (word, before, after) => {
    const settled = settleByRule(word, before, after);
    if (settled !== null) return { reading: settled, margin: Number.POSITIVE_INFINITY };
    const known = find(word.toLowerCase());
    if (!known) return null;
    const general = known.question && shared.get(known.question);
    const turn = known.yes === 1 ? 1 : -1;
    let score = known.bias;
    for (const feature of contextFeatures(word, before, after)) {
      score += known.own.get(feature) ?? 0;
      if (feature.startsWith(TOPIC)) score += ofTopics.get(feature) ?? 0;
      else if (general) score += turn * (general.get(feature) ?? 0);
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
  chooser ??= createChooser(weights as Weights);
  return chooser(word, before, after);
};
