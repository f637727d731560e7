import type { Weights, WordWeights } from '../../analyze/homographs/choose-reading.ts';
import { TOPIC } from '../../analyze/homographs/context-features.ts';
import type { Example } from './read-examples.ts';

/** How often a feature must be seen: for all verbs, for one word. */
const SEEN = { verb: 3, own: 2 };
const ROUNDS = 20;
/** Follow-the-regularised-leader (McMahan and others 2013): steps, L2 and L1; found by cross-validation. */
const STEP = 0.5;
const PENALTY = 1;
const SPARSE = 6;
/** How readily a word leans to its commoner reading. */
const BIAS_PENALTY = 0.1;

/** One weight while it is learnt. */
interface Slot {
  z: number;
  n: number;
  readonly penalty: number;
  readonly sparse: number;
}

/**
 * Learns by logistic regression what tells the readings apart: weights for verbs of all words, and weights for
 * each word. L1 leaves most of them out. The same examples give the same weights.
 */
export function fitWeights(examples: readonly Example[]): Weights {
  const counts = countFeatures(examples);
  const slots = new Map<string, Slot>();
  const slotOf = (id: string, penalty = PENALTY, sparse = SPARSE): Slot => {
    const slot = slots.get(id) ?? { z: 0, n: 0, penalty, sparse };
    slots.set(id, slot);
    return slot;
  };
  const inputs = examples.map((example) => ({
    target: example.reading,
    terms: [
      { slot: slotOf(`${example.word}\t`, BIAS_PENALTY, 0), sign: 1 },
      ...idsOf(example)
        .filter(({ id, least }) => counts.get(id)! >= least)
        .map(({ id, sign }) => ({ slot: slotOf(id), sign })),
    ],
  }));
  for (let round = 0; round < ROUNDS; round++) {
    for (const { target, terms } of shuffle(inputs, round)) {
      const weights = terms.map(({ slot }) => weightOf(slot));
      const score = terms.reduce((sum, { sign }, i) => sum + sign * weights[i]!, 0);
      const error = 1 / (1 + Math.exp(-score)) - target;
      for (const [i, { slot, sign }] of terms.entries()) {
        const gradient = error * sign;
        const before = Math.sqrt(slot.n);
        slot.n += gradient * gradient;
        slot.z += gradient - ((Math.sqrt(slot.n) - before) / STEP) * weights[i]!;
      }
    }
  }
  return gather(examples, slots);
}

/** `\tfeature` for all verbs, turned towards the verb reading; `word\tfeature` for the word alone. */
function idsOf({ word, features, verb }: Example): { id: string; sign: number; least: number }[] {
  return features.flatMap((feature) => {
    const own = { id: `${word}\t${feature}`, sign: 1, least: SEEN.own };
    if (verb === undefined || feature.startsWith(TOPIC)) return [own];
    return [{ id: `\t${feature}`, sign: verb === 1 ? 1 : -1, least: SEEN.verb }, own];
  });
}

function countFeatures(examples: readonly Example[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const example of examples)
    for (const { id } of idsOf(example)) counts.set(id, (counts.get(id) ?? 0) + 1);
  return counts;
}

function weightOf({ z, n, penalty, sparse }: Slot): number {
  if (Math.abs(z) <= sparse) return 0;
  return (Math.sign(z) * sparse - z) / ((1 + Math.sqrt(n)) / STEP + penalty);
}

/** In tenths, without those that round to nothing, sorted. */
function gather(examples: readonly Example[], slots: ReadonlyMap<string, Slot>): Weights {
  const learnt = [...slots]
    .map(([id, slot]) => {
      const [word = '', feature = ''] = id.split('\t');
      return { word, feature, weight: Math.round(weightOf(slot) * 10) };
    })
    .filter(({ weight }) => weight !== 0)
    .sort((a, b) => (a.feature < b.feature ? -1 : a.feature > b.feature ? 1 : 0));
  const of = (wanted: string) =>
    Object.fromEntries(
      learnt
        .filter(({ word, feature }) => word === wanted && feature !== '')
        .map(({ feature, weight }) => [feature, weight]),
    );
  const listed = new Map(examples.filter((one) => one.listed).map(({ word, verb }) => [word, verb]));
  const words = [...listed].sort(([a], [b]) => (a < b ? -1 : 1));
  return {
    verb: of(''),
    words: Object.fromEntries(
      words.map(([word, verb]): [string, WordWeights] => [
        word,
        {
          ...(verb === undefined ? {} : { verb }),
          bias: learnt.find((one) => one.word === word && one.feature === '')?.weight ?? 0,
          own: of(word),
        },
      ]),
    ),
  };
}

/** A fixed shuffle for each round. */
function shuffle<T>(items: readonly T[], round: number): T[] {
  const shuffled = [...items];
  let state = round + 1;
  for (let i = shuffled.length - 1; i > 0; i--) {
    state = (Math.imul(state, 1_103_515_245) + 12_345) >>> 0;
    const j = (state >>> 8) % (i + 1);
    [shuffled[i], shuffled[j]] = [shuffled[j]!, shuffled[i]!];
  }
  return shuffled;
}
