import affixes from './affixes.json' with { type: 'json' };

/** The last sound of a base for which a suffix is said this way. */
export type Allomorph = 'any' | 'voiceless' | 'voiced' | 'sibilant' | 't-d';

export interface Sounding {
  /** ARPAbet without stress, `AX` for schwa. */
  readonly sounds: readonly string[];
  readonly after: Allomorph;
}

export interface Suffix {
  readonly text: string;
  /** All ways it is said; the usual one first. */
  readonly soundings: readonly Sounding[];
  /** Parts of speech it is added to: n(oun) v(erb) a(djective) adverb = r. */
  readonly joins: string;
  /** Parts of speech of the result. */
  readonly makes: string;
  /** Grammatical ending (-s, -ed …): every verb, noun or adjective takes it. */
  readonly inflection: boolean;
  /** The base may change its vowels or last consonant (electric, electricity; act, action). */
  readonly reshapes: boolean;
  /** Doubles a final consonant (hopping, sunny); Latin endings do not (robotic). */
  readonly doubles: boolean;
}

export interface Prefix {
  readonly text: string;
  readonly soundings: readonly (readonly string[])[];
  /** Parts of speech it is added to. */
  readonly joins: string;
  /** A word of a definition that shows the prefix means what it says (`re`: again). */
  readonly means: RegExp;
}

/** A row of affixes.json: sounds parted by spaces; a value left out is false, or means any sound. */
interface SuffixRow
  extends Pick<Suffix, 'text' | 'joins' | 'makes'>,
    Partial<Pick<Suffix, 'inflection' | 'reshapes' | 'doubles'>> {
  readonly soundings: readonly { readonly sounds: string; readonly after?: string }[];
}

/** Every suffix the analysis takes off, from -s to -ster. */
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

/** The suffix spelt this way, or undefined: `findSuffix('ness')`, but not `findSuffix('nes')`. */
export function findSuffix(text: string): Suffix | undefined {
  return SUFFIX_BY_TEXT.get(text);
}

/** Every prefix the analysis takes off. `in` is the one that means not; inside is in + side, a compound. */
export const PREFIXES: readonly Prefix[] = affixes.prefixes.map(({ text, joins, soundings, means }) => ({
  text,
  joins,
  means: new RegExp(`\\b(${means.join('|')})\\b`),
  soundings: soundings.map((sounds) => sounds.split(' ')),
}));
