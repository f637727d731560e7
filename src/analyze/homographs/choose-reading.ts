import { contextFeatures, TOPIC } from './context-features.ts';
import { settleByRule } from './settle-by-rule.ts';
import weights from './weights.json' with { type: 'json' };

/** A reading by its index among the readings of the word, with its certainty in log odds. 0 is a toss-up. */
export interface Choice {
  readonly reading: number;
  readonly margin: number;
}

/**
 * A question shared by many words:
 *
 * - Is the word a verb (use), or a noun or adjective?
 * - Is it a verb with -s (uses) or a plural?
 * - Is it a past or participle (wound), or a noun or adjective?
 * - Is it past or present (read)?
 */
export type Question = 'verb' | 'verb with s' | 'past' | 'tense';

/** The weights of one word, in tenths of log odds for its second reading (reading 1). */
export interface WordWeights {
  /** The question that this word shares with other words. The weights of all words with this question also count. */
  readonly question?: Question;
  /** The reading that is the verb or the past in the question. */
  readonly yes?: number;
  readonly bias: number;
  readonly own: FeatureWeights;
}

/**
 * Features of `contextFeatures` with their weights, in the format of `writeFeatures`: `-1=the -4|ab=article is 12`. The
 * format is text, which the browser loads with the code. As objects, the 12,000 features took a quarter of the start-up
 * time of the background.
 */
export type FeatureWeights = string;

/** All weights. */
export interface Weights {
  readonly questions: Readonly<Record<Question, FeatureWeights>>;
  /** The weights of topic words, shared by all words that have topics. */
  readonly topics: FeatureWeights;
  readonly words: Readonly<Record<string, WordWeights>>;
}

const PARTED = '|';

/** Writes features in their stored format. No feature contains a bar, because no piece of a context is a bar. */
export function writeFeatures(
  weights: readonly (readonly [feature: string, weight: number])[],
): FeatureWeights {
  return weights.map(([feature, weight]) => `${feature} ${weight}`).join(PARTED);
}

/**
 * Reads features into a map. Their strings are built at run time, and a map finds such strings far sooner than an
 * object does.
 */
function readFeatures(written: FeatureWeights): ReadonlyMap<string, number> {
  if (written === '') return new Map();
  return new Map(
    written.split(PARTED).map((one) => {
      const blank = one.lastIndexOf(' ');
      return [one.slice(0, blank), Number(one.slice(blank + 1))];
    }),
  );
}

/**
 * Chooses the reading of a word from the pieces before and after it (see `readContext`). Returns null for words that
 * are no homographs.
 */
export type Chooser = (word: string, before: readonly string[], after: readonly string[]) => Choice | null;

/** The margin from which a choice is right in 98.5 of 100 places (tests/accuracy/measure-homographs.ts). */
export const SURE = 1.5;

/**
 * Creates a chooser. It uses a rule if one is sure, and otherwise learnt weights: the evidence for a verb in general
 * and the evidence for the word's second reading.
 * A plural or -s form without weights of its own (records) is treated as its base form, with the question whether it is
 * a verb with -s.
 */
export function createChooser({ questions, topics, words }: Weights): Chooser {
  const learnt = new Map(Object.entries(words));
  // A page has only a few of the words. The weights of each word are read at its first occurrence.
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

/** Chooses the reading of a homograph in its place: they `read` the map today, she `read` it last night. */
export const chooseReading: Chooser = (word, before, after) => {
  chooser ??= createChooser(weights as Weights);
  return chooser(word, before, after);
};
