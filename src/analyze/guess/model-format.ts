/**
 * The file format of the guessing model. data/guess/write-model.ts writes the file, and open-model.ts reads it.
 *
 * - 8 bytes: length of the header, number of nodes (both Uint32, little endian)
 * - the header: JSON, see {@link ModelHeader}
 * - the weights of traits, one signed byte each (choice-traits.ts)
 * - one stream of bits, each coded by how often its kind was set before (read-bits.ts)
 *
 * The model is an n-gram trie over tokens. A word runs from its last letter to its first, because a silent e tells
 * about the vowel before it. The root's children are all tokens in order, and their levels come first. Then each node
 * follows, in the order in which the nodes were made. Its first bit tells whether it has children ({@link parentSlot}).
 * If so, its backoff level follows. Then there is one bit for each child of its suffix (the same tokens without the
 * farthest), which tells whether the node has that child too ({@link childSlot}). If so, the child's level follows.
 * Long lists of choices are divided into blocks of {@link BLOCK}, and a block without children is one bit ({@link
 * blockSlot}). So a child always has a suffix, and a node takes one to two bytes.
 */
export interface ModelHeader {
  /**
   * Tokens from number 2 on: role letter (see {@link ROLES}), text, letters, sound, spells or '', and 1 if the token is
   * stressed.
   */
  readonly tokens: readonly (readonly [
    role: string,
    text: string,
    letters: string,
    sound: string,
    spells: string,
    stressed: 0 | 1,
  ])[];
  /** Size of the weights that follow, in bytes. */
  readonly weights: number;
  /** Maximum number of tokens in a run, including the predicted one. */
  readonly order: number;
}

export const ROLES = { b: 'base', j: 'joined', p: 'prefix', s: 'suffix' } as const;

/**
 * Tokens for the two edges of a word. Reading starts with the token for the end of the word and ends with the token for
 * its start.
 */
export const EDGE = 0;
export const DONE = 1;

/**
 * A level is the negative logarithm of a probability or of a backoff weight, in steps of an eighth. There are 128
 * levels.
 */
export const LEVEL_STEP = 0.125;
export const LEVELS = 128;

/** Number of kinds of bits for {@link createBitReader}. Each kind has its own count. */
export const SLOTS = 8 * 16 + 8 * 16 * 16 + 8 * LEVELS + 16 * LEVELS + 8 * 16;

/** Number of choices in a block, and the minimum length of a list that is divided into blocks. */
export const BLOCK = 8;
export const LONG_LIST = 24;

/** Returns the slot of the bit that tells whether a node has children, by the node's order and level. */
export function parentSlot(order: number, level: number): number {
  return order * 16 + (level >> 3);
}

/**
 * Returns the slot of the bit that tells whether a node has a certain child of its suffix. The slot depends on the
 * child's order and level and on the number of choices.
 */
export function childSlot(order: number, level: number, choices: number): number {
  return 128 + ((order * 16 + (level >> 3)) << 4) + Math.min(15, 32 - Math.clz32(choices));
}

/**
 * Returns the first slot of a backoff level. The level is written as seven bits, the highest first: a tree of {@link
 * LEVELS}.
 */
export function backoffSlot(order: number): number {
  return 128 + 2048 + order * LEVELS;
}

/**
 * Returns the first slot of a child's level, by the level of the child's suffix. The level is written like a backoff
 * level.
 */
export function levelSlot(suffixLevel: number): number {
  return 128 + 2048 + 8 * LEVELS + (suffixLevel >> 3) * LEVELS;
}

/**
 * Returns the slot of the bit that tells whether a node has a child in a block, by the node's order and the level of
 * the block's first choice.
 */
export function blockSlot(order: number, level: number): number {
  return 128 + 2048 + 24 * LEVELS + order * 16 + (level >> 3);
}
