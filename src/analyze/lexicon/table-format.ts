import type { AffixForm } from './word-record.ts';

/**
 * The file of all words, written by data/lexicon/write-table.ts and read by open-lexicon.ts.
 *
 * - 8 bytes: length of the header, number of words (both Uint32, little endian)
 * - the header: JSON, see {@link TableHeader}
 * - one Uint32 for each block of {@link BLOCK} words: where it starts after these offsets
 * - the blocks. A word: one byte shared << 4 | rest, how many letters it shares with the word before (none at
 *   a block's start) and how many more it has ({@link LONG}: their number follows); those letters; the length
 *   of the body; the body.
 *
 * - one bit for each word, the lowest of a byte first: whether it is common
 * - lines in order of their words, each a word, a tab and what no rule knows of how the British say it; their length is in the header
 *
 * A body is one or more readings, each a tag byte and what it calls for. Low two bits of the tag: the kind;
 * bit 2: homograph; bit 3: name; the upper four: a number of the kind ({@link LONG}: it follows).
 * - {@link WHOLE} (number of units): the units
 * - {@link DERIVED} (number of units): affix, base, the units
 * - {@link AFFIXED} (base): affix
 * - {@link COMPOUND} (left << 2 | right): cut
 *
 * A base is lessened << 3 | stem << 1 | reading. A unit, or a pair of units often met together, is one byte below {@link RARE_UNITS}, or RARE_UNITS + high byte and low byte.
 */
export const BLOCK = 16;
export const WHOLE = 0;
export const DERIVED = 1;
export const AFFIXED = 2;
export const COMPOUND = 3;
export const RARE_UNITS = 248;
/** As many letters as four bits can say, or more. */
export const LONG = 15;
export const HOMOGRAPH = 4;
export const NAME = 8;

export interface TableHeader {
  /** Letters and sound of each unit. */
  readonly units: readonly (readonly [letters: string, sound: string])[];
  /** The meaning of each code: one or two places in `units`. The commonest codes come first. */
  readonly codes: readonly (readonly number[])[];
  /** Bytes of the British lines at the end. */
  readonly british: number;
  readonly affixes: readonly (readonly [letters: string, sound: string, kind: AffixForm['kind']])[];
}
