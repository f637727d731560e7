import { decodeText } from '../lexicon/open-lexicon.ts';
import { TRAIT_SLOTS } from './choice-traits.ts';
import type { GuessToken } from './guess-token.ts';
import {
  DONE,
  EDGE,
  HEADER_KIND,
  KINDS,
  LEVEL_STEP,
  type ModelHeader,
  ROLES,
  WEIGHT_KIND,
} from './model-format.ts';
import { createCodeReader } from './read-codes.ts';
import { readTrie, type Trie } from './read-trie.ts';

/**
 * An n-gram model. It gives the probability of a token after the tokens before it. A word runs from its last letter to
 * its first.
 */
export interface GuessModel {
  /** Tokens by their number. The first two are the edges of a word and cover no letters. */
  readonly tokens: readonly GuessToken[];
  /** The state at a word's last letter. */
  readonly start: number;
  /**
   * Advances from a state by one token. Returns the new state and leaves the cost (negative natural logarithm) in
   * `cost`.
   */
  step(state: number, token: number): number;
  /** Cost of the last step. */
  readonly cost: number;
  /** Weights of the traits of a reading, in steps of TRAIT_STEP. */
  readonly weights: Int8Array;
}

const MESSAGE = 'The guessing model cannot be read: build it again with `npm run data`.';

/** Opens the file made by `npm run data`. This takes some ten milliseconds. Throws if the bytes are not such a file. */
export function openModel(bytes: Uint8Array): GuessModel {
  if (bytes.length < 8) throw new Error(MESSAGE);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const codes = createCodeReader(bytes, 8, KINDS);
  // A code has at least one bit.
  const headerBytes = new Uint8Array(Math.min(view.getUint32(4, true), 8 * bytes.length));
  for (let i = 0; i < headerBytes.length; i++) headerBytes[i] = codes.byte(HEADER_KIND);
  const header = readHeader(headerBytes);
  if (header.weights !== TRAIT_SLOTS) throw new Error(MESSAGE);
  const weights = new Int8Array(TRAIT_SLOTS);
  for (let i = 0; i < TRAIT_SLOTS; i++) weights[i] = codes.byte(WEIGHT_KIND);
  const tokens = [{ role: 'base', text: '', letters: '', sound: '-' } as const, ...[]] as GuessToken[];
  tokens.push(tokens[0]!);
  for (const [role, text, letters, sound, spells, stressed] of header.tokens) {
    const own = { role: ROLES[role as keyof typeof ROLES], text, letters, sound, stressed: stressed === 1 };
    tokens.push(spells === '' ? own : { ...own, spells });
  }
  const trie = tokens.length > DONE ? readTrie(codes, view.getUint32(0, true), tokens.length, header) : null;
  if (!trie) throw new Error(MESSAGE);
  return Object.assign(createStepper(trie), { tokens, weights });
}

function createStepper({
  token,
  level,
  stateOf,
  firstOf,
  fallback,
}: Trie): Omit<GuessModel, 'tokens' | 'weights'> {
  /** Returns the child of a state for a token, or -1. The children of the root are all tokens in order. */
  function child(state: number, wanted: number): number {
    if (state === 0) return 1 + wanted;
    let low = firstOf(state);
    let high = firstOf(state + 1) - 1;
    while (low <= high) {
      const middle = (low + high) >> 1;
      const found = token[middle]!;
      if (found === wanted) return middle;
      if (found < wanted) low = middle + 1;
      else high = middle - 1;
    }
    return -1;
  }

  const model = {
    start: stateOf(1 + EDGE),
    cost: 0,
    step(state: number, next: number): number {
      let levels = 0;
      let from = state;
      let found = child(from, next);
      while (found === -1) {
        levels += fallback[from]! & 255;
        from = fallback[from]! >> 8;
        found = child(from, next);
      }
      model.cost = (levels + level[found]!) * LEVEL_STEP;
      // The new state is the longest end of the run that has a continuation in the trie.
      let to = stateOf(found);
      while (to === 0 && from !== 0) {
        from = fallback[from]! >> 8;
        to = stateOf(child(from, next));
      }
      return to;
    },
  };
  return model;
}

function readHeader(bytes: Uint8Array): ModelHeader {
  try {
    return JSON.parse(decodeText(bytes)) as ModelHeader;
  } catch {
    throw new Error(MESSAGE);
  }
}
