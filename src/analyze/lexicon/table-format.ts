import type { AffixForm } from './word-record.ts';

/**
 * The format of the file of all words. data/lexicon/write-table.ts writes the file, and open-lexicon.ts reads it.
 *
 * - 8 bytes: length of the header, number of words (both Uint32, little endian)
 * - the header: JSON, see {@link TableHeader}
 * - one Uint32 for each block of {@link BLOCK} words: its start, counted from the end of these offsets
 * - the blocks
 * - one bit for each word, the lowest of a byte first: 1 if the word is common
 * - lines in the order of their words. Each has a word, a tab and the facts about its British pronunciation that no
 * rule can give. The length of the lines is in the header.
 *
 * A word in a block starts with one byte: shared << 4 | rest. `shared` is the number of letters the word shares with
 * the word before (0 at the start of a block). `rest` is the number of its other letters ({@link LONG}: the number
 * follows). Then come those letters, the length of the body, and the body.
 *
 * A body is one or more readings. Each is a tag byte and the data for that tag. The low two bits of the tag are the
 * kind, bit 2 means homograph, and bit 3 means name. The upper four are a number that depends on the kind ({@link
 * LONG}: the number follows).
 * - {@link WHOLE} (number of units): the units
 * - {@link DERIVED} (number of units): affix, base, the units
 * - {@link AFFIXED} (base): affix
 * - {@link COMPOUND} (left << 2 | right): cut
 *
 * A base is lessened << 3 | stem << 1 | reading. A unit, or a pair of units that often occur together, is one byte
 * below {@link RARE_UNITS}, or RARE_UNITS + high byte and low byte.
 */
export const BLOCK = 16;
export const WHOLE = 0;
export const DERIVED = 1;
export const AFFIXED = 2;
export const COMPOUND = 3;
export const RARE_UNITS = 248;
/** The highest number in four bits. It means this many letters or more. */
export const LONG = 15;
export const HOMOGRAPH = 4;
export const NAME = 8;

export interface TableHeader {
  /** Letters and sound of each unit. */
  readonly units: readonly (readonly [letters: string, sound: string])[];
  /** The meaning of each code: one or two places in `units`. The commonest codes come first. */
  readonly codes: readonly (readonly number[])[];
  /** Size of the British lines at the end, in bytes. */
  readonly british: number;
  readonly affixes: readonly (readonly [letters: string, sound: string, kind: AffixForm['kind']])[];
}
