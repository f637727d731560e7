/**
 * The file of the guessing model, written by data/guess/write-model.ts and read by open-model.ts.
 *
 * - 8 bytes: length of the header, number of nodes (both Uint32, little endian)
 * - the header: JSON, see {@link ModelHeader}
 * - the weights of traits, one signed byte each (choice-traits.ts)
 * - one stream of bits, each coded against how often its kind was set before (read-bits.ts)
 *
 * The model is an n-gram trie over tokens. A word runs from its last letter to its first, because a silent e
 * tells about the vowel before it. The root's children are all tokens in order; their levels come first. Then,
 * node by node in the order they were made: has it children ({@link parentSlot}); if so its backoff level, and for each child
 * of its suffix (the same tokens without the farthest) whether it has that child too ({@link childSlot}), followed
 * by the child's level. Long lists of choices go in blocks of {@link BLOCK}, and a block without children is one
 * bit ({@link blockSlot}). So a child always has a suffix, and a node is told in one to two bytes.
 */
export interface ModelHeader {
  /** Tokens from number 2 on: role letter (see {@link ROLES}), text, letters, sound, spells or '', 1 where it is stressed. */
  readonly tokens: readonly (readonly [
    role: string,
    text: string,
    letters: string,
    sound: string,
    spells: string,
    stressed: 0 | 1,
  ])[];
  /** How many bytes of weights follow. */
  readonly weights: number;
  /** Longest run of tokens, the one foretold among them. */
  readonly order: number;
}

export const ROLES = { b: 'base', j: 'joined', p: 'prefix', s: 'suffix' } as const;

/** Tokens that stand for the end of the word, where reading starts, and for its start, where it ends. */
export const EDGE = 0;
export const DONE = 1;

/** A level is a negative logarithm in steps of an eighth, one of 128: of a probability or of a backoff weight. */
export const LEVEL_STEP = 0.125;
export const LEVELS = 128;

/** Kinds of bits, for {@link createBitReader}: which count a bit belongs to. */
export const SLOTS = 8 * 16 + 8 * 16 * 16 + 8 * LEVELS + 16 * LEVELS + 8 * 16;

/** Choices in a block, and how many a list has at least to be told in blocks. */
export const BLOCK = 8;
export const LONG_LIST = 24;

/** Has the node children? By its order and level. */
export function parentSlot(order: number, level: number): number {
  return order * 16 + (level >> 3);
}

/** Has the node this child of its suffix? By the child's order and level and how many there are to choose from. */
export function childSlot(order: number, level: number, choices: number): number {
  return 128 + ((order * 16 + (level >> 3)) << 4) + Math.min(15, 32 - Math.clz32(choices));
}

/** First slot of a backoff level, told in seven bits from the highest: a tree of {@link LEVELS}. */
export function backoffSlot(order: number): number {
  return 128 + 2048 + order * LEVELS;
}

/** The same for the level of a child; by the level of its suffix. */
export function levelSlot(suffixLevel: number): number {
  return 128 + 2048 + 8 * LEVELS + (suffixLevel >> 3) * LEVELS;
}

/** Has the node a child in this block? By its order and the level of the block's first choice. */
export function blockSlot(order: number, level: number): number {
  return 128 + 2048 + 24 * LEVELS + order * 16 + (level >> 3);
}
