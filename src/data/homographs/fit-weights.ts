import { existsSync, readFileSync } from 'node:fs';
import type { Question, Weights, WordWeights } from '../../analyze/homographs/choose-reading.ts';
import { TOPIC, writeWeights } from '../../analyze/homographs/feature-weights.ts';
import { learnWeights, type Row, type Term } from './learn-weights.ts';
import type { Example } from './read-examples.ts';

/** The general weights of a question, in tenths of log odds by feature, learnt from the Brown corpus. */
export type General = Readonly<Record<Question, Readonly<Record<string, number>>>>;

export const QUESTIONS: readonly Question[] = ['verb', 'verb with s', 'past', 'tense'];
export const GENERAL = new URL('general-weights.json', import.meta.url);

const ROUNDS = 8;
/**
 * The limits for a word's own features, for features shared by all words, for topics, and for a word's tendency.
 * `least`: how often a feature must occur. `sparse` and `penalty`: L1 and L2. Found by cross-validation.
 */
const OWN = { least: 2, sparse: 2, penalty: 2 };
const SHARED = { least: 3, sparse: 6, penalty: 1 };
const TOPICS = { least: 3, sparse: 1, penalty: 1 };
const LEAN = { least: 1, sparse: 0, penalty: 0.1 };

/** The weight of topics that all words with topics share. */
const OF_TOPICS = `${TOPIC}:topic`;

/**
 * Learns the weights that distinguish the readings: for each word alone, and for all words of a question. The weights
 * of a question start from its general weights. The same examples give the same weights, in tenths. Weights that round
 * to zero are left out.
 */
export function fitWeights(examples: readonly Example[], general: General = readGeneral()): Weights {
  const learnt = learnWeights(
    examples.map((example) => rowOf(example, general)),
    ROUNDS,
  );
  // Zero is added, so that a weight that rounds to -0 becomes 0.
  const tenths = (id: string) => Math.round((learnt.get(id) ?? 0) * 10) + 0;
  const byOwner = new Map<string, string[]>();
  for (const id of learnt.keys()) {
    const [owner = '', feature = ''] = id.split('\t');
    byOwner.set(owner, [...(byOwner.get(owner) ?? []), feature]);
  }
  const of = (owner: string, start: Readonly<Record<string, number>> = {}) => {
    const features = new Set([...Object.keys(start), ...(byOwner.get(owner) ?? [])]);
    features.delete('');
    return writeWeights(
      [...features]
        .sort()
        .map((feature) => [feature, (start[feature] ?? 0) + tenths(`${owner}\t${feature}`)] as const)
        .filter(([, weight]) => weight !== 0),
    );
  };
  const listed = new Map(examples.filter((one) => one.listed).map((one) => [one.word, one]));
  const words = [...listed].sort(([a], [b]) => (a < b ? -1 : 1));
  return {
    questions: Object.fromEntries(
      QUESTIONS.map((question) => [question, of(`?${question}`, general[question])]),
    ) as Weights['questions'],
    topics: of('?topics'),
    words: Object.fromEntries(
      words.map(([word, { question, yes }]): [string, WordWeights] => [
        word,
        { ...(question === undefined ? {} : { question, yes }), bias: tenths(`${word}\t`), own: of(word) },
      ]),
    ),
  };
}

function rowOf({ word, features, question, yes, reading, weight }: Example, general: General): Row {
  const sign = yes === 1 ? 1 : -1;
  let known = 0;
  const terms: Term[] = [{ id: `${word}\t`, sign: 1, ...LEAN }];
  for (const feature of features) {
    terms.push({ id: `${word}\t${feature}`, sign: 1, ...OWN });
    if (feature.startsWith(OF_TOPICS)) terms.push({ id: `?topics\t${feature}`, sign: 1, ...TOPICS });
    if (question === undefined || feature.startsWith(TOPIC)) continue;
    known += (sign * (general[question][feature] ?? 0)) / 10;
    terms.push({ id: `?${question}\t${feature}`, sign, ...SHARED });
  }
  return { terms, target: reading, weight, known };
}

/** Reads the weights that learn-from-brown.ts wrote. The weights are empty if it was never run. */
export function readGeneral(): General {
  if (existsSync(GENERAL)) return JSON.parse(readFileSync(GENERAL, 'utf8')) as General;
  return { verb: {}, 'verb with s': {}, past: {}, tense: {} };
}
