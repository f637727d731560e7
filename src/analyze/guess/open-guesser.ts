import type { BuiltWord } from '../build/built-word.ts';
import { buildFromTokens } from './build-from-tokens.ts';
import { TRAIT_STEP, traitsOf, traitToken } from './choice-traits.ts';
import { createFindTokens } from './find-tokens.ts';
import { nameOfToken, tokensOf } from './guess-token.ts';
import { DONE } from './model-format.ts';
import { type GuessModel, openModel } from './open-model.ts';

/** Reads unlisted words with a model trained on the listed ones. */
export interface Guesser {
  /**
   * Returns the likeliest reading of a word with 2 to 25 letters a-z, with its cost (negative natural logarithm).
   * Returns null for any other word.
   */
  guess(word: string): { readonly built: BuiltWord; readonly cost: number } | null;
  /**
   * Returns the model's cost of a reading that was made in another way. Returns infinity if the reading has a spelling
   * that the model has never met.
   */
  costOf(word: string, built: BuiltWord): number;
}

/**
 * Opens a guesser over the file made by `npm run data`. The file is decoded at the first request for a word. That
 * request throws if the bytes are not such a file.
 */
export function openGuesser(bytes: Uint8Array): Guesser {
  // Holds the bytes at first, and later the model that is opened from the bytes.
  let model: Uint8Array | ReturnType<typeof open> = bytes;
  const opened = (): ReturnType<typeof open> => {
    if (model instanceof Uint8Array) model = open(model);
    return model;
  };
  return {
    guess(word) {
      if (!/^[a-z]{2,25}$/.test(word)) return null;
      const { choose, costOf, model } = opened();
      const tokens = choose(word);
      if (!tokens) return null;
      const built = buildFromTokens(tokens.map((token) => model.tokens[token]!));
      return { built, cost: costOf(word, built) };
    },
    costOf: (word, built) => opened().costOf(word, built),
  };
}

function open(bytes: Uint8Array) {
  const model = openModel(bytes);
  const findTokens = createFindTokens(model);
  const numbers = new Map<string, number[]>();
  for (const [i, token] of model.tokens.entries()) {
    const known = numbers.get(nameOfToken(token));
    if (known) known.push(i);
    else numbers.set(nameOfToken(token), [i]);
  }
  const traits = model.tokens.map(traitToken);

  /** Returns the amount by which the traits of a reading reduce its cost. */
  function credit(word: string, tokens: readonly number[]): number {
    let steps = 0;
    for (const slot of traitsOf(
      word,
      tokens.map((token) => traits[token]!),
    ))
      steps += model.weights[slot]!;
    return steps * TRAIT_STEP;
  }

  return {
    model,
    choose(word: string): readonly number[] | null {
      let best: readonly number[] | null = null;
      let least = Infinity;
      for (const { tokens, cost } of findTokens(word)) {
        const all = cost - credit(word, tokens);
        if (all >= least) continue;
        least = all;
        best = tokens;
      }
      return best;
    },
    costOf(word: string, built: BuiltWord): number {
      const spelt = tokensOf(word, built)?.map((token) => numbers.get(nameOfToken(token)) ?? []);
      const found = spelt ? placeStress(model, spelt) : null;
      return found ? found.cost - credit(word, found.tokens) : Infinity;
    },
  };
}

/**
 * Chooses the likeliest stress for the spellings of a word, among tokens that differ only in stress. The tokens are
 * returned in the order of the letters. Returns null if a spelling has no token.
 */
function placeStress(
  model: GuessModel,
  spelt: readonly (readonly number[])[],
): { readonly tokens: readonly number[]; readonly cost: number } | null {
  type Way = { readonly cost: number; readonly tokens: readonly number[] };
  let ways = new Map<number, Way>([[model.start, { cost: 0, tokens: [] }]]);
  for (const choices of spelt.toReversed()) {
    const next = new Map<number, Way>();
    for (const [state, { cost, tokens }] of ways) {
      for (const token of choices) {
        const to = model.step(state, token);
        const all = cost + model.cost;
        if (all < (next.get(to)?.cost ?? Infinity)) next.set(to, { cost: all, tokens: [token, ...tokens] });
      }
    }
    ways = next;
  }
  let best: Way | null = null;
  for (const [state, { cost, tokens }] of ways) {
    model.step(state, DONE);
    if (cost + model.cost < (best?.cost ?? Infinity)) best = { cost: cost + model.cost, tokens };
  }
  return best;
}
