import { findRule, type Rule } from '../rule.ts';
import type { SpellingChange } from '../types.ts';
import { findSuffix } from './affixes.ts';

export interface Suffixed {
  readonly spelling: string;
  /** The suffix as spelt in the word. For -s, `bus` gets -es; for -ly, `basic` gets -ally. */
  readonly affix: string;
  readonly change: SpellingChange;
}

const VOWEL_GROUP = /[aeiou]+|(?<!^)y/g;

/** True if a word seems to have one syllable, by its letters: `hop`, `quit`, `hope`; false for `open`, `begin`. */
export function looksOneSyllable(word: string): boolean {
  const body = word.replace(/(?<=[^aeiou][^aeiou]|[aeiouy][^aeiou])e$/, '').replace(/qu/g, 'q');
  return (body.match(VOWEL_GROUP)?.length ?? 0) <= 1;
}

/**
 * True if the word ends in one vowel letter and one consonant letter other than w, x or y: `hop`, `begin`, `quit`; not
 * `boat`, `mix`, `help`.
 */
export function endsInShortPattern(word: string): boolean {
  return /(^|[^aeiouy]|qu)[aeiouy][bdfgklmnprstvz]$/.test(word) && !/(^|[^q])u[aeiouy][^aeiou]$/.test(word);
}

/** A base and the suffix to be added. */
interface SuffixPlace {
  readonly base: string;
  readonly suffix: string;
  readonly lastStressed: boolean;
}

/** A rule for the spelling of base and suffix together. Each example has a base, a suffix and the resulting word. */
export interface SuffixRule extends Rule<SuffixPlace> {
  readonly change: SpellingChange;
  /** Returns the base as spelt before the suffix. Left out if the base is unchanged. */
  readonly stem?: (base: string) => string;
  /** Returns the suffix as spelt in the word. Left out if the suffix is unchanged. */
  readonly affix?: (suffix: string) => string;
  /** The letters after the stem, if they are not the whole suffix. */
  readonly written?: string;
}

const cutOne = (base: string): string => base.slice(0, -1);
/** True for the e of hope, false for the e of be. */
const endsInE = ({ base }: SuffixPlace): boolean => base.endsWith('e') && /[aeiouy].*e$/.test(base);

/**
 * The usual rules for teaching (common practice). England's national curriculum, English Appendix 1, 2013, states the
 * same rules for -s, -ed, -ing, -er, -est, -y, -ly, -ness, -ful, -less.
 */
export const SUFFIX_RULES: readonly SuffixRule[] = [
  {
    name: 'y after a consonant becomes i, but not before i, nor in short words before -ness and -ly',
    example: 'happy + ness = happiness',
    counterExample: 'shy + ness = shyness',
    applies: ({ base, suffix }) =>
      /[^aeiou]y$/.test(base) &&
      !/^(i|'|ship|hood|like|teen|ling)/.test(suffix) &&
      !(/^(ness|ly)$/.test(suffix) && looksOneSyllable(base)),
    change: 'y-to-i',
    stem: (base) => `${cutOne(base)}i`,
    affix: (suffix) => (suffix === 's' ? 'es' : suffix),
  },
  {
    name: '-s is -es after s, x, z, ch and sh',
    example: 'mix + s = mixes',
    counterExample: 'hat + s = hats',
    applies: ({ base, suffix }) => suffix === 's' && /([sxz]|[cs]h)$/.test(base),
    change: 'none',
    affix: () => 'es',
  },
  {
    name: '-s and -es change nothing else',
    example: 'hat + s = hats',
    counterExample: 'pony + s = ponies',
    applies: ({ suffix }) => suffix === 's' || suffix === 'es',
    change: 'none',
  },
  {
    name: '-le and -ly are -ly',
    example: 'gentle + ly = gently',
    counterExample: 'sole + ly = solely',
    applies: ({ base, suffix }) => suffix === 'ly' && /[^aeiou]le$/.test(base),
    change: 'drop-e',
    stem: cutOne,
    written: 'y',
  },
  {
    name: 'true, due and whole lose their e before -ly',
    example: 'true + ly = truly',
    counterExample: 'blue + ly = bluely',
    applies: ({ base, suffix }) => suffix === 'ly' && /^(un)?(true|due)$|^whole$/.test(base),
    change: 'drop-e',
    stem: cutOne,
  },
  {
    name: '-ll and -ly have two l together',
    example: 'full + ly = fully',
    counterExample: 'real + ly = really',
    applies: ({ base, suffix }) => suffix === 'ly' && base.endsWith('ll'),
    change: 'none',
    written: 'y',
  },
  {
    name: '-ly is -ally after -ic, but for publicly',
    example: 'basic + ly = basically',
    counterExample: 'public + ly = publicly',
    applies: ({ base, suffix }) => suffix === 'ly' && base.endsWith('ic') && base !== 'public',
    change: 'none',
    affix: () => 'ally',
  },
  {
    name: 'a suffix that begins with a consonant changes nothing',
    example: 'hope + ful = hopeful',
    counterExample: 'hope + ing = hoping',
    applies: ({ suffix }) => !/^[aeiouy]/.test(suffix),
    change: 'none',
  },
  {
    name: 'ie becomes y before -ing',
    example: 'die + ing = dying',
    counterExample: 'die + ed = died',
    applies: ({ base, suffix }) => base.endsWith('ie') && suffix.startsWith('i'),
    change: 'drop-e',
    stem: (base) => `${base.slice(0, -2)}y`,
  },
  {
    name: 'a final e stays after c or g before a and o',
    example: 'change + able = changeable',
    counterExample: 'change + ing = changing',
    applies: (place) => endsInE(place) && /[cg]e$/.test(place.base) && /^[ao]/.test(place.suffix),
    change: 'none',
  },
  {
    name: 'a final ee, oe or ye stays before a vowel other than e, and before no -y',
    example: 'see + ing = seeing',
    counterExample: 'agree + ed = agreed',
    applies: (place) =>
      endsInE(place) && /[eoy]e$/.test(place.base) && !place.suffix.startsWith('e') && place.suffix !== 'y',
    change: 'none',
  },
  {
    name: 'a final e goes before a vowel',
    example: 'hope + ing = hoping',
    counterExample: 'hope + ful = hopeful',
    applies: endsInE,
    change: 'drop-e',
    stem: cutOne,
  },
  {
    name: 'a final c gets a k before e, i and y, but not before Latin endings',
    example: 'panic + ing = panicking',
    counterExample: 'public + ity = publicity',
    applies: ({ base, suffix }) =>
      base.endsWith('c') && /^[eiy]/.test(suffix) && !findSuffix(suffix)?.reshapes,
    change: 'none',
    stem: (base) => `${base}k`,
  },
  {
    name: 'one consonant after one vowel letter of a stressed syllable doubles',
    example: 'hop + ing = hopping',
    counterExample: 'help + ing = helping',
    applies: ({ base, suffix, lastStressed }) =>
      (findSuffix(suffix)?.doubles ?? false) && lastStressed && endsInShortPattern(base),
    change: 'double',
    stem: (base) => base + base.at(-1),
  },
  {
    name: 'any other suffix changes nothing',
    example: 'open + ing = opening',
    counterExample: 'hop + ing = hopping',
    applies: () => true,
    change: 'none',
  },
];

/**
 * Spells base + suffix by {@link SUFFIX_RULES}. `lastStressed` tells whether the last syllable is stressed. By default
 * it is true only for a base of one syllable.
 */
export function addSuffix(base: string, suffix: string, lastStressed = looksOneSyllable(base)): Suffixed {
  const rule = findRule(SUFFIX_RULES, { base, suffix, lastStressed })!;
  const stem = rule.stem?.(base) ?? base;
  const affix = rule.affix?.(suffix) ?? suffix;
  return { spelling: stem + (rule.written ?? affix), affix, change: rule.change };
}
