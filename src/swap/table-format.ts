/**
 * Layout of `swaps.bin`: the magic, the length of the text part (4 bytes, little endian), the text part (JSON,
 * `TableText`), zeros up to a multiple of 4, then the lists of `TableText.counts` in the order below, each at a
 * multiple of 4.
 *
 * | list | of | what |
 * |---|---|---|
 * | codebook | signed bytes | 256 choices for each part of a vector |
 * | codes | bytes | the vectors of the first `vectors` words, 25 bytes each |
 * | shares | 16 bits | noun, verb, adjective, adverb: four bits each, 15ths of the word's uses |
 * | headWords, headParts | 16 bits, bytes | the words that have swaps, sorted; part of speech 0-3, 4 for exactly this
 * form |
 * | headEnds | 16 bits × 2 | end of each head's swaps |
 * | swapWords, swapPriors, swapSenses | 16 bits, bytes, 16 bits | swap, quality without context (255ths), its sense or
 * 0 |
 * | swapMarks | bytes | bits of `MARKS` |
 * | cues | 16 bits | three words that occur near each sense |
 * | phrases | 16 bits | words that belong together: the number of words, then the words |
 * | followedWords | 16 bits | words whose followers were counted, sorted |
 * | followerShares | bytes | for each followed word, how often each of `FOLLOWERS` follows (250ths) |
 */
export const MAGIC = 'swaps2';

/**
 * A word vector consists of 25 parts of 4 numbers. Each part is stored as one byte
 * (`src/data/swap/quantise-vectors.ts`).
 */
export const PARTS = 25;
export const PART = 4;
export const CHOICES = 256;
export const CUES = 3;

/** Small words that another word may require after it: afraid of, decision to. */
export const FOLLOWERS = [
  ...['to', 'of', 'for', 'with', 'about', 'at', 'from', 'in', 'on', 'into', 'by', 'as', 'that', 'over'],
  ...['against', 'through', 'than', 'between', 'upon', 'how'],
] as const;

/** Facts about a swap as bits, besides its quality. */
export const MARKS = {
  /** The swap fits wherever the word has this part of speech (enormous: huge), as a person judged. */
  sure: 1,
  /** The swap fits only before an object: they raised it. */
  object: 2,
  /** The swap fits only without an object: it rose. */
  noObject: 4,
} as const;

/** The parts of speech, in the order of all lists of four. */
export const PARTS_OF_SPEECH = ['n', 'v', 'a', 'r'] as const;
/** The number for heads whose swaps replace exactly this word form (`majority`: most), in any part of speech. */
export const AS_IS = 4;

export interface TableText {
  readonly counts: {
    readonly words: number;
    readonly vectors: number;
    readonly heads: number;
    readonly swaps: number;
    readonly senses: number;
    readonly phrases: number;
    readonly followed: number;
  };
  /**
   * The words, separated by spaces. Several words of one swap are joined by `_`. The first `vectors` words have
   * vectors, and the commonest come first.
   */
  readonly words: string;
  /** `lemma/part/form=text`, separated by spaces. */
  readonly irregular: string;
  /** Words that take a different article than their first letter suggests: hour, unit. */
  readonly otherArticle: string;
  /** Maps each feature to the weights that it adds to noun, verb, adjective and adverb (100ths). */
  readonly partWeights: Readonly<Record<string, readonly number[]>>;
}
