import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { mergeWeak } from '../../analyze/alignment/sounds.ts';
import {
  TRAIT_SLOTS,
  TRAIT_STEP,
  type TraitToken,
  traitsOf,
  traitToken,
} from '../../analyze/guess/choice-traits.ts';
import { createFindTokens } from '../../analyze/guess/find-tokens.ts';
import { openModel } from '../../analyze/guess/open-model.ts';
import { buildLexicon } from '../lexicon/build-lexicon.ts';
import { cleanPronunciation } from '../lexicon/clean-pronunciation.ts';
import { readCmudict } from '../read-cmudict.ts';
import { learnGuesser, listTokens, type TokenWord } from './build-guesser.ts';
import { isHeldOut, partOf } from './held-out.ts';

/**
 * Learns the weights that choose a guess among the likeliest pronunciations of a word, and writes choice-weights.bin.
 * Takes some minutes. Each fifth of the words is read by a model learnt from the other fifths, so that the weights
 * reflect how a model errs on new words. The tenth for measurements (held-out.ts) is left out of everything.
 */

const PARTS = 5;
const ROUNDS = 3;
const PACE = 0.1;

interface Way {
  readonly right: boolean;
  readonly cost: number;
  readonly traits: Uint16Array;
}

const { records, pronunciations } = buildLexicon(
  () => undefined,
  (word) => !isHeldOut(word),
);
const words = listTokens(records, pronunciations);
const spoken = [...readCmudict()].filter(([word]) => /^[a-z]{2,25}$/.test(word) && !isHeldOut(word));
const lists: Way[][] = [];
for (let part = 0; part < PARTS; part++) {
  lists.push(
    ...readPart(
      words.filter(({ word }) => partOf(word, PARTS) !== part),
      spoken.filter(([word]) => partOf(word, PARTS) === part),
    ),
  );
  console.log(`part ${part + 1} of ${PARTS} read`);
}
const weights = learnWeights(lists);
const steps = Int8Array.from(weights, (weight) =>
  Math.max(-127, Math.min(127, Math.round(weight / TRAIT_STEP))),
);
writeFileSync(fileURLToPath(new URL('choice-weights.bin', import.meta.url)), steps);

/**
 * Returns the pronunciations that a model learnt from `learnt` finds for each word. Only words with both right and
 * wrong pronunciations are returned.
 */
function readPart(
  learnt: readonly TokenWord[],
  said: readonly (readonly [word: string, variants: readonly (readonly string[])[]])[],
): Way[][] {
  const model = openModel(learnGuesser(learnt, new Int8Array(TRAIT_SLOTS)));
  const findTokens = createFindTokens(model);
  const traits = model.tokens.map(traitToken);
  const found: Way[][] = [];
  for (const [word, variants] of said) {
    const listed = new Set(variants.map((phones) => mergeWeak(cleanPronunciation(word, phones).join(' '))));
    const ways = findTokens(word).map(({ tokens, cost }): Way => {
      const own: TraitToken[] = tokens.map((token) => traits[token]!);
      const sounds = tokens.map((token) => model.tokens[token]!.sound).filter((sound) => sound !== '-');
      return {
        right: listed.has(mergeWeak(sounds.join(' ').replaceAll('.', ' '))),
        cost,
        traits: Uint16Array.from(traitsOf(word, own)),
      };
    });
    if (ways.some(({ right }) => right) && ways.some(({ right }) => !right)) found.push(ways);
  }
  return found;
}

/**
 * Makes the right pronunciations likelier by gradient steps. The step size of each weight falls with its steps so far
 * (AdaGrad). Returns the mean of the weights at many moments after the first round, which errs less than the final
 * weights.
 */
function learnWeights(lists: Way[][]): Float64Array {
  const weights = new Float64Array(TRAIT_SLOTS);
  const paces = new Float64Array(TRAIT_SLOTS).fill(0.1);
  const means = new Float64Array(TRAIT_SLOTS);
  let moments = 0;
  let met = 0;
  const random = createRandom();
  for (let round = 0; round < ROUNDS; round++) {
    for (let i = lists.length - 1; i > 0; i--) {
      const j = Math.floor(random() * (i + 1));
      [lists[i], lists[j]] = [lists[j]!, lists[i]!];
    }
    for (const ways of lists) {
      if (round > 0 && ++met % 5000 === 0) {
        moments++;
        for (const [slot, weight] of weights.entries()) means[slot]! += weight;
      }
      const scores = ways.map(({ cost, traits }) =>
        traits.reduce((sum, slot) => sum + weights[slot]!, -cost),
      );
      const most = Math.max(...scores);
      const chances = scores.map((score) => Math.exp(score - most));
      const all = chances.reduce((sum, chance) => sum + chance, 0);
      const right = chances.reduce((sum, chance, i) => sum + (ways[i]!.right ? chance : 0), 1e-300);
      for (const [i, way] of ways.entries()) {
        const gain = (way.right ? chances[i]! / right : 0) - chances[i]! / all;
        if (Math.abs(gain) < 1e-4) continue;
        for (const slot of way.traits) {
          paces[slot]! += gain * gain;
          weights[slot]! += (PACE * gain) / Math.sqrt(paces[slot]!);
        }
      }
    }
  }
  return means.map((sum) => sum / Math.max(1, moments));
}

/** Returns a generator of numbers from 0 to 1 that gives the same numbers each time. */
function createRandom(): () => number {
  let state = 1;
  return () => {
    state = (Math.imul(state, 1_103_515_245) + 12_345) >>> 0;
    return state / 2 ** 32;
  };
}
