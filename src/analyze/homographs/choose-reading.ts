import { contextFeatures, piecesNear } from './context-features.ts';
import { createFeatureNumbers, type FeatureWeights, type NumberedWeights, TOPIC } from './feature-weights.ts';
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
 * All weights. The lists are text, which the browser loads with the code. As objects, the 12,000 features took a quarter
 * of the start-up time of the background.
 */
export interface Weights {
  readonly questions: Readonly<Record<Question, FeatureWeights>>;
  /** The weights of topic words, shared by all words that have topics. */
  readonly topics: FeatureWeights;
  readonly words: Readonly<Record<string, WordWeights>>;
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
  const numbers = createFeatureNumbers();
  // A page has only a few of the words. The weights of each word are read at its first occurrence.
  const read = new Map<FeatureWeights, NumberedWeights>();
  const weightsOf = (written: FeatureWeights): NumberedWeights => {
    const known = read.get(written) ?? numbers.read(written);
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
    const near = piecesNear(before, after);
    const settled = settleByRule(word, before, after, near);
    if (settled !== null) return { reading: settled, margin: Number.POSITIVE_INFINITY };
    const known = find(word.toLowerCase());
    if (!known) return null;
    const own = weightsOf(known.own);
    const ofTopics = weightsOf(topics);
    const general = known.question && weightsOf(questions[known.question]);
    const turn = known.yes === 1 ? 1 : -1;
    let score = known.bias;
    for (const feature of contextFeatures(word, before, after, near)) {
      const number = numbers.find(feature);
      if (number === undefined) continue;
      score += own.get(number) ?? 0;
      if (feature[0] === TOPIC) score += ofTopics.get(number) ?? 0;
      else if (general) score += turn * (general.get(number) ?? 0);
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
