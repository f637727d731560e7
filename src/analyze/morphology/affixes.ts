import affixes from './affixes.json' with { type: 'json' };

/** The kind of last sound that a base must have for this pronunciation of a suffix. */
export type Allomorph = 'any' | 'voiceless' | 'voiced' | 'sibilant' | 't-d';

export interface Sounding {
  /** Sounds in ARPAbet without stress, with `AX` for schwa. */
  readonly sounds: readonly string[];
  readonly after: Allomorph;
}

export interface Suffix {
  readonly text: string;
  /** All pronunciations of the suffix, the usual one first. */
  readonly soundings: readonly Sounding[];
  /** Parts of speech that the suffix is added to: n(oun), v(erb), a(djective), r for adverb. */
  readonly joins: string;
  /** Parts of speech of the result. */
  readonly makes: string;
  /** True for a grammatical ending (-s, -ed …). Every verb, noun or adjective takes such an ending. */
  readonly inflection: boolean;
  /** True if the base may change its vowels or last consonant (electric, electricity; act, action). */
  readonly reshapes: boolean;
  /** True if the suffix doubles a final consonant (hopping, sunny). Latin endings do not (robotic). */
  readonly doubles: boolean;
}

export interface Prefix {
  readonly text: string;
  readonly soundings: readonly (readonly string[])[];
  /** Parts of speech that the prefix is added to. */
  readonly joins: string;
  /** Matches a word in a definition which shows that the prefix has its usual meaning (`re`: again). */
  readonly means: RegExp;
}

/**
 * A row of affixes.json. Sounds are separated by spaces. A missing flag means false, and a missing `after` means any
 * sound.
 */
interface SuffixRow
  extends Pick<Suffix, 'text' | 'joins' | 'makes'>,
    Partial<Pick<Suffix, 'inflection' | 'reshapes' | 'doubles'>> {
  readonly soundings: readonly { readonly sounds: string; readonly after?: string }[];
}

/** All suffixes that the analysis can remove, from -s to -ster. */
export const SUFFIXES: readonly Suffix[] = affixes.suffixes.map(
  ({ text, joins, makes, inflection = false, reshapes = false, doubles = false, soundings }: SuffixRow) => ({
    text,
    joins,
    makes,
    inflection,
    reshapes,
    doubles,
    soundings: soundings.map(({ sounds, after = 'any' }) => ({
      sounds: sounds.split(' '),
      after: after as Allomorph,
    })),
  }),
);

const SUFFIX_BY_TEXT = new Map(SUFFIXES.map((suffix) => [suffix.text, suffix]));

/** Returns the suffix with this spelling, or undefined: `findSuffix('ness')` finds one, `findSuffix('nes')` does not. */
export function findSuffix(text: string): Suffix | undefined {
  return SUFFIX_BY_TEXT.get(text);
}

/** All prefixes that the analysis can remove. `in` is only the prefix that means not: inside is in + side, a compound. */
export const PREFIXES: readonly Prefix[] = affixes.prefixes.map(({ text, joins, soundings, means }) => ({
  text,
  joins,
  means: new RegExp(`\\b(${means.join('|')})\\b`),
  soundings: soundings.map((sounds) => sounds.split(' ')),
}));
