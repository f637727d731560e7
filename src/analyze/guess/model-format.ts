/**
 * The file format of the guessing model. data/guess/write-model.ts writes the file, and open-model.ts reads it.
 *
 * - 8 bytes: number of nodes, length of the header (both Uint32, little endian)
 * - the tables of codes, then one stream of codes (read-codes.ts)
 *
 * The stream has, in this order:
 * - the header: JSON, see {@link ModelHeader}, one code for each byte ({@link HEADER_KIND})
 * - the weights of traits, one code for each signed byte ({@link WEIGHT_KIND}, choice-traits.ts)
 * - the trie
 *
 * The model is an n-gram trie over tokens. A word runs from its last letter to its first, because a silent e tells
 * about the vowel before it. The root's children are all tokens in order, and their levels come first. Then each node
 * with a shorter run than the longest follows, in the order in which the nodes were made. First comes the number of its
 * children ({@link childrenKind}), which is left out if its suffix (the same tokens without the farthest) has none. A
 * node with children is a state. Its backoff level follows ({@link backoffKind}). The suffix has every child of the
 * node, too, so the children are given as choices among the children of the suffix: for each child the number of
 * choices that are skipped before it ({@link skippedKind}) and its level ({@link levelKind}). So a node takes little
 * more than one byte.
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
  /** Number of weights. */
  readonly weights: number;
  /** Maximum number of tokens in a run, including the predicted one. */
  readonly order: number;
  /** Number of nodes with children, including the root. */
  readonly states: number;
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

/** The kinds of values for {@link createCodeReader}. Each kind has a table of codes of its own. */
export const HEADER_KIND = 1;
export const WEIGHT_KIND = 2;
const CHILDREN_KINDS = 3;
const BACKOFF_KINDS = CHILDREN_KINDS + 16;
const SKIPPED_KINDS = BACKOFF_KINDS + 8;
const LEVEL_KINDS = SKIPPED_KINDS + 16 * 8;
/** Number of kinds. */
export const KINDS = LEVEL_KINDS + 16 * 16;

/** Returns the kind of a number of children, by the number of children of the node's suffix. */
export function childrenKind(choices: number): number {
  return CHILDREN_KINDS + sizeOf(choices);
}

/** Returns the kind of a backoff level, by the number of tokens in the node's run. */
export function backoffKind(length: number): number {
  return BACKOFF_KINDS + length;
}

/**
 * Returns the kind of the number of skipped choices, by the number of choices that can still be skipped and the number
 * of children that follow.
 */
export function skippedKind(spare: number, left: number): number {
  return SKIPPED_KINDS + sizeOf(spare) * 8 + Math.min(7, sizeOf(left));
}

/** Returns the kind of a child's level, by the level of the child's suffix and the number of the child's siblings. */
export function levelKind(suffixLevel: number, siblings: number): number {
  return LEVEL_KINDS + (suffixLevel >> 3) * 16 + sizeOf(siblings);
}

/** Returns the number of binary digits, at most 15. */
function sizeOf(number: number): number {
  return Math.min(15, 32 - Math.clz32(number));
}
