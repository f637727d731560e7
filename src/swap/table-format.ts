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
 * | headWords, headParts | 16 bits, bytes | the words that have swaps, sorted; part of speech 0-3, 4 for the very form |
 * | headEnds | 16 bits × 2 | end of each head's swaps |
 * | swapWords, swapPriors, swapSenses | 16 bits, bytes, 16 bits | swap, how good without context (255ths), its sense or 0 |
 * | swapMarks | bytes | bits of `MARKS` |
 * | cues | 16 bits | three words that are met near each sense |
 * | phrases | 16 bits | words that belong together: how many, then the words |
 * | followedWords | 16 bits | words whose followers were counted, sorted |
 * | followerShares | bytes | for each of them and of `FOLLOWERS`, how often it follows (250ths) |
 */
export const MAGIC = 'swaps2';

/** A word vector is 25 parts of 4 numbers, each part written as one byte (`src/data/swap/quantise-vectors.ts`). */
export const PARTS = 25;
export const PART = 4;
export const CHOICES = 256;
export const CUES = 3;

/** Small words that a word may ask for behind it: afraid of, decision to. */
export const FOLLOWERS = [
  ...['to', 'of', 'for', 'with', 'about', 'at', 'from', 'in', 'on', 'into', 'by', 'as', 'that', 'over'],
  ...['against', 'through', 'than', 'between', 'upon', 'how'],
] as const;

/** Facts of a swap besides how good it is, as bits. */
export const MARKS = {
  /** The swap fits wherever the word has this part of speech (enormous: huge), as a person judged. */
  sure: 1,
  /** Only before an object: they raised it. */
  object: 2,
  /** Only without an object: it rose. */
  noObject: 4,
} as const;

/** Parts of speech in the order of all lists of four. */
export const PARTS_OF_SPEECH = ['n', 'v', 'a', 'r'] as const;
/** The number of the heads whose swaps stand for the very form (`majority`: most), of any part of speech. */
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
  /** Separated by spaces; several words of one swap are joined by `_`. The first `vectors` have vectors and stand commonest first. */
  readonly words: string;
  /** `lemma/part/form=text`, separated by spaces. */
  readonly irregular: string;
  /** Words that take the other article than their first letter says: hour, unit. */
  readonly otherArticle: string;
  /** Feature to what it adds to noun, verb, adjective, adverb (100ths). */
  readonly partWeights: Readonly<Record<string, readonly number[]>>;
}
