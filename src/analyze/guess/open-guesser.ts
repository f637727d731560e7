import type { BuiltWord } from '../build/built-word.ts';
import { buildFromTokens } from './build-from-tokens.ts';
import { createFindTokens } from './find-tokens.ts';
import { keyOf, tokensOf } from './guess-token.ts';
import { DONE } from './model-format.ts';
import { openModel } from './open-model.ts';

/** Reads words nobody has listed, as likely as a model learnt from the listed ones finds them. */
export interface Guesser {
  /** The likeliest reading of 2 to 25 letters a-z, with its cost (negative natural logarithm); null for any other. */
  guess(word: string): { readonly built: BuiltWord; readonly cost: number } | null;
  /** What the model thinks of a reading made otherwise; infinite where it has a spelling the model never met. */
  costOf(word: string, built: BuiltWord): number;
}

/**
 * A guesser over the file that `npm run data` makes. The file is decoded when the first word is asked for.
 * The first question throws when the bytes are not such a file.
 */
export function openGuesser(bytes: Uint8Array): Guesser {
  let opened: ReturnType<typeof open> | undefined;
  return {
    guess(word) {
      if (!/^[a-z]{2,25}$/.test(word)) return null;
      opened ??= open(bytes);
      const found = opened.findTokens(word);
      if (!found) return null;
      const tokens = found.tokens.map((token) => opened!.model.tokens[token]!);
      return { built: buildFromTokens(tokens), cost: found.cost };
    },
    costOf(word, built) {
      opened ??= open(bytes);
      const { model, numbers } = opened;
      let cost = 0;
      let state = model.start;
      for (const token of tokensOf(word, built)?.reverse() ?? [undefined]) {
        const number = token && numbers.get(keyOf(token));
        if (number === undefined) return Infinity;
        state = model.step(state, number);
        cost += model.cost;
      }
      model.step(state, DONE);
      return cost + model.cost;
    },
  };
}

function open(bytes: Uint8Array) {
  const model = openModel(bytes);
  const numbers = new Map(model.tokens.map((token, i) => [keyOf(token), i]));
  return { model, numbers, findTokens: createFindTokens(model) };
}
