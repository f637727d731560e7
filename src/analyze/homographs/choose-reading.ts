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
  /** The weights of all words with that question then count as well. */
  readonly question?: Question;
  /** The reading that is the verb or past of the question. */
  readonly yes?: number;
  readonly bias: number;
  readonly own: FeatureWeights;
}

/**
 * Features of `contextFeatures` with their weights, as `writeFeatures` writes them: `-1=the -4|ab=article is 12`. Text, which the browser
 * has ready with the code; as objects the 12,000 of them took a quarter of the background's start.
 */
export type FeatureWeights = string;

/** All weights. */
export interface Weights {
  readonly questions: Readonly<Record<Question, FeatureWeights>>;
  /** How much words of a topic tell, for all words that have topics. */
  readonly topics: FeatureWeights;
  readonly words: Readonly<Record<string, WordWeights>>;
}

const PARTED = '|';

/** Features as they are kept; none has a bar in it, since no piece of a context is one. */
export function writeFeatures(
  weights: readonly (readonly [feature: string, weight: number])[],
): FeatureWeights {
  return weights.map(([feature, weight]) => `${feature} ${weight}`).join(PARTED);
}

/** Features are strings put together for the moment, which a map finds far sooner than an object does. */
function readFeatures(written: FeatureWeights): ReadonlyMap<string, number> {
  if (written === '') return new Map();
  return new Map(
    written.split(PARTED).map((one) => {
      const blank = one.lastIndexOf(' ');
      return [one.slice(0, blank), Number(one.slice(blank + 1))];
    }),
  );
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
  const learnt = new Map(Object.entries(words));
  // A page has a few of the words; the weights of each are read when it is first met.
  const read = new Map<FeatureWeights, ReadonlyMap<string, number>>();
  const weightsOf = (written: FeatureWeights): ReadonlyMap<string, number> => {
    const known = read.get(written) ?? readFeatures(written);
    read.set(written, known);
    return known;
  };
  const find = (word: string): WordWeights | undefined => {
    const own = learnt.get(word);
    if (own || !word.endsWith('s')) return own;
    const base = learnt.get(word.slice(0, -1));
    return base?.question === 'verb' ? { ...base, question: 'verb with s' } : undefined;
  };
  return (word, before, after) => {
    const settled = settleByRule(word, before, after);
    if (settled !== null) return { reading: settled, margin: Number.POSITIVE_INFINITY };
    const known = find(word.toLowerCase());
    if (!known) return null;
    const own = weightsOf(known.own);
    const ofTopics = weightsOf(topics);
    const general = known.question && weightsOf(questions[known.question]);
    const turn = known.yes === 1 ? 1 : -1;
    let score = known.bias;
    for (const feature of contextFeatures(word, before, after)) {
      score += own.get(feature) ?? 0;
      if (feature.startsWith(TOPIC)) score += ofTopics.get(feature) ?? 0;
      else if (general) score += turn * (general.get(feature) ?? 0);
    }
    return { reading: score > 0 ? 1 : 0, margin: Math.abs(score) / 10 };
  };
}

let chooser: Chooser | undefined;

/** The reading a homograph has in its place: they `read` the map today, she `read` it last night. */
export const chooseReading: Chooser = (word, before, after) => {
  chooser ??= createChooser(weights as Weights);
  return chooser(word, before, after);
};
