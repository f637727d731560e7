import { decodeText } from '../lexicon/open-lexicon.ts';
import { TRAIT_SLOTS } from './choice-traits.ts';
import type { GuessToken } from './guess-token.ts';
import {
  BLOCK,
  backoffSlot,
  blockSlot,
  childSlot,
  DONE,
  EDGE,
  LEVEL_STEP,
  LONG_LIST,
  levelSlot,
  type ModelHeader,
  parentSlot,
  ROLES,
  SLOTS,
} from './model-format.ts';
import { createBitReader } from './read-bits.ts';

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

/** Opens the file made by `npm run data`. This takes some fifty milliseconds. Throws if the bytes are not such a file. */
export function openModel(bytes: Uint8Array): GuessModel {
  if (bytes.length < 8) throw new Error(MESSAGE);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const headerLength = view.getUint32(0, true);
  const header = readHeader(bytes.subarray(8, 8 + headerLength));
  const tokens = [{ role: 'base', text: '', letters: '', sound: '-' } as const, ...[]] as GuessToken[];
  tokens.push(tokens[0]!);
  for (const [role, text, letters, sound, spells, stressed] of header.tokens) {
    const own = { role: ROLES[role as keyof typeof ROLES], text, letters, sound, stressed: stressed === 1 };
    tokens.push(spells === '' ? own : { ...own, spells });
  }
  const bits = 8 + headerLength + header.weights;
  const weights = Int8Array.from(bytes.subarray(8 + headerLength, bits));
  if (weights.length !== TRAIT_SLOTS) throw new Error(MESSAGE);
  const trie = readTrie(bytes, bits, view.getUint32(4, true), tokens.length, header.order);
  return Object.assign(createStepper(trie, tokens.length), { tokens, weights });
}

interface Trie {
  /** The last token of each node. */
  readonly token: Uint16Array;
  readonly suffix: Int32Array;
  /** The index of each node's first child. The children end at the first child of the next node. */
  firstOf(node: number): number;
  readonly level: Uint8Array;
  readonly backoff: Uint8Array;
  readonly order: number;
  /** The index of the first node with the full length. From there on no node has children. */
  readonly longest: number;
}

function readTrie(bytes: Uint8Array, start: number, size: number, tokens: number, order: number): Trie {
  if (tokens * NEIGHBOURS > 0x1_0000) throw new Error(MESSAGE);
  const bits = createBitReader(bytes, start, SLOTS);
  const token = new Uint16Array(size);
  const suffix = new Int32Array(size);
  const { firstOf, setFirst } = createFirsts(size + 1);
  const level = new Uint8Array(size);
  const backoff = new Uint8Array(size);
  setFirst(0, 1);
  let made = 1;
  for (; made <= tokens; made++) {
    token[made] = made - 1;
    level[made] = bits.level(levelSlot(0));
  }
  let node = 1;
  for (let depth = 1; depth < order; depth++) {
    for (const end = made; node < end; node++) {
      setFirst(node, made);
      if (bits.bit(parentSlot(depth, level[node]!)) === 0) continue;
      backoff[node] = bits.level(backoffSlot(depth));
      const from = firstOf(suffix[node]!);
      const to = firstOf(suffix[node]! + 1);
      const isLong = to - from >= LONG_LIST;
      for (let choice = from; choice < to; choice++) {
        if (isLong && (choice - from) % BLOCK === 0) {
          const empty = bits.bit(blockSlot(depth, level[choice]!)) === 0;
          if (empty) choice += BLOCK - 1;
          if (empty) continue;
        }
        if (bits.bit(childSlot(depth, level[choice]!, to - from)) === 0) continue;
        if (made === size) throw new Error(MESSAGE);
        token[made] = token[choice]!;
        suffix[made] = choice;
        level[made] = bits.level(levelSlot(level[choice]!));
        made++;
      }
    }
  }
  if (made !== size) throw new Error(MESSAGE);
  for (let rest = node; rest <= size; rest++) setFirst(rest, made);
  return { token, suffix, firstOf, level, backoff, order, longest: node };
}

/**
 * The number of neighbouring nodes that share one base index for their first children. With 2,048 tokens or less, these
 * nodes have fewer than 65,536 children together.
 */
const NEIGHBOURS = 32;

/** Creates a list of numbers that never decrease from one node to the next. It takes half the memory of a plain list. */
function createFirsts(size: number): {
  firstOf(node: number): number;
  setFirst(node: number, first: number): void;
} {
  const bases = new Int32Array(Math.ceil(size / NEIGHBOURS));
  const beyond = new Uint16Array(size);
  return {
    firstOf: (node) => bases[Math.floor(node / NEIGHBOURS)]! + beyond[node]!,
    setFirst(node, first) {
      const place = Math.floor(node / NEIGHBOURS);
      if (node % NEIGHBOURS === 0) bases[place] = first;
      beyond[node] = first - bases[place]!;
    },
  };
}

function createStepper(
  { token, suffix, firstOf, level, backoff, longest }: Trie,
  tokens: number,
): Omit<GuessModel, 'tokens' | 'weights'> {
  function child(node: number, wanted: number): number {
    let low = firstOf(node);
    let high = firstOf(node + 1) - 1;
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
    start: 1 + EDGE,
    cost: 0,
    step(state: number, next: number): number {
      let levels = 0;
      let node = state;
      for (;;) {
        const found = node === 0 ? 1 + next : child(node, next);
        if (found !== -1) {
          model.cost = (levels + level[found]!) * LEVEL_STEP;
          return context(found);
        }
        levels += backoff[node]!;
        node = suffix[node]!;
      }
    },
  };

  /** Returns the longest end of a run that has a continuation in the trie. */
  function context(node: number): number {
    let at = node;
    while (at !== 0 && (at >= longest || firstOf(at) === firstOf(at + 1))) at = suffix[at]!;
    return at;
  }

  if (tokens <= DONE) throw new Error(MESSAGE);
  return model;
}

function readHeader(bytes: Uint8Array): ModelHeader {
  try {
    return JSON.parse(decodeText(bytes)) as ModelHeader;
  } catch {
    throw new Error(MESSAGE);
  }
}
