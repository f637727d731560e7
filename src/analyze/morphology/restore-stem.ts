import { findRule, type Rule } from '../rule.ts';
import type { SpellingChange } from '../types.ts';
import { addSuffix, looksOneSyllable } from './add-suffix.ts';

export interface Stem {
  readonly stem: string;
  readonly change: SpellingChange;
}

/**
 * The nouns whose f becomes v before -s: leaves, bookshelves. The list is closed, so believes does not come from
 * belief.
 */
const TURNS_TO_V = /(calf|dwarf|elf|half|hoof|knife|leaf|life|loaf|scarf|sheaf|thief|wharf|wife|wolf)$/;

/** A word, the removed suffix, the remaining letters, and a possible base. */
interface StemPlace {
  readonly word: string;
  readonly suffix: string;
  readonly rest: string;
  readonly stem: string;
  /**
   * The change by which {@link addSuffix} makes the word from the stem. Null if {@link addSuffix} makes a different
   * word.
   */
  readonly byRule: SpellingChange | null;
}

/**
 * A rule for the change of a base before a suffix. It can also say that the word does not come from this base. Each
 * example has a word, a base, a suffix and the change.
 */
export interface StemRule extends Rule<StemPlace> {
  readonly change: SpellingChange | null | ((place: StemPlace) => SpellingChange | null);
}

const swapsFForV = ({ stem, rest, suffix }: StemPlace): boolean =>
  /fe?$/.test(stem) && /ve?$/.test(rest) && /^e?s$/.test(suffix);

/**
 * The rules for spelling base + suffix as the word: {@link addSuffix} in reverse, and spellings in use that {@link
 * addSuffix} does not give.
 */
export const STEM_RULES: readonly StemRule[] = [
  {
    name: 'f becomes v before -s in the nouns that do so',
    example: 'leaves = leaf + es: f-to-v',
    counterExample: 'chiefs = chief + s: none',
    applies: (place) => swapsFForV(place) && TURNS_TO_V.test(place.stem),
    change: 'f-to-v',
  },
  {
    name: 'the v of any other word was no f',
    example: 'believes = belief + es: no',
    counterExample: 'wolves = wolf + es: f-to-v',
    applies: swapsFForV,
    change: null,
  },
  {
    name: 'as the suffix is added by rule, the last syllable stressed or not',
    example: 'hopping = hop + ing: double',
    counterExample: 'hoping = hop + ing: no',
    applies: ({ byRule }) => byRule !== null,
    change: ({ byRule }) => byRule,
  },
  {
    name: 's and z are doubled before -es',
    example: 'quizzes = quiz + es: double',
    counterExample: 'buses = bus + es: none',
    applies: ({ stem, rest, suffix }) => suffix === 'es' && rest === stem + stem.at(-1) && /[sz]$/.test(stem),
    change: 'double',
  },
  {
    name: '-es follows o, z, s and x',
    example: 'heroes = hero + es: none',
    counterExample: 'hopes = hop + es: no',
    applies: ({ stem, rest, suffix }) => suffix === 'es' && stem === rest && /[ozsx]$/.test(stem),
    change: 'none',
  },
  {
    name: '-s alone follows a ch that is said k',
    example: 'stomachs = stomach + s: none',
    counterExample: 'churches = church + es: none',
    applies: ({ stem, rest, suffix }) => suffix === 's' && stem === rest && /ch$/.test(stem),
    change: 'none',
  },
  {
    name: 'e may be kept before -able, -age, -ing, -y and -ish',
    example: 'likeable = like + able: none',
    counterExample: 'liker = like + er: drop-e',
    applies: ({ stem, rest, suffix }) =>
      stem === rest && stem.endsWith('e') && /^(able|age|ing|y|ish)$/.test(suffix),
    change: 'none',
  },
  {
    name: 'e may be lost before -ment, -ful, -th and -ly',
    example: 'argument = argue + ment: drop-e',
    counterExample: 'movement = move + ment: none',
    applies: ({ stem, rest, suffix }) => stem === `${rest}e` && /^(ment|ful|th|ly)$/.test(suffix),
    change: 'drop-e',
  },
  {
    name: 'otherwise it was not this base',
    example: 'hoping = hop + ing: no',
    counterExample: 'hoping = hope + ing: drop-e',
    applies: () => true,
    change: null,
  },
];

/**
 * Removes a suffix by letters alone. Returns every base for which base + suffix could be spelt `word`, longest first.
 * `restoreStem('hoping', 'ing')` gives hope (drop-e) but not hop, which doubles its p. `restoreStem('hopping', 'ing')`
 * gives hopp and hop (double). The caller decides which base is a word and sounds right. The list is empty if the word
 * does not end in the suffix or if the remaining letters have no vowel.
 *
 * The stems include the reverse of {@link addSuffix} and the stems of spellings in use that break its rules: a kept e
 * (likeable, ageing, mileage), a lost e (argument, awful, truth), a doubled l or p without stress (travelled,
 * worshipped), an undoubled consonant (focused), quizzes, and the v of leaves.
 */
export function restoreStem(word: string, suffix: string): readonly Stem[] {
  if (!word.endsWith(suffix) || word.length - suffix.length < 2) return [];
  const rest = word.slice(0, -suffix.length);
  const found: Stem[] = [];
  for (const stem of possibleStems(rest, suffix)) {
    if (!/[aeiouy]/.test(stem)) continue;
    const change = changeBetween(stem, word, suffix, rest);
    if (change) found.push({ stem, change });
  }
  return found.sort((a, b) => b.stem.length - a.stem.length);
}

function possibleStems(rest: string, suffix: string): string[] {
  const stems = [rest, `${rest}e`];
  if (/(.)\1$/.test(rest) || rest.endsWith('ck')) stems.push(rest.slice(0, -1));
  if (rest.endsWith('i')) stems.push(`${rest.slice(0, -1)}y`);
  if (suffix === 'ing' && rest.endsWith('y')) stems.push(`${rest.slice(0, -1)}ie`);
  if (suffix === 'ly') stems.push(`${rest}l`, `${rest}le`);
  if (suffix === 'es' && rest.endsWith('v')) stems.push(`${rest.slice(0, -1)}f`);
  if (suffix === 's' && rest.endsWith('ve')) stems.push(`${rest.slice(0, -2)}fe`);
  return stems;
}

/**
 * Returns the change by which base + suffix are spelt as the word. Returns null if they are not spelt so. `rest` is the
 * word's letters before the suffix.
 */
export function changeBetween(
  stem: string,
  word: string,
  suffix: string,
  rest: string,
): SpellingChange | null {
  const place = { word, suffix, rest, stem, byRule: changeByRule(stem, word, suffix) };
  const { change } = findRule(STEM_RULES, place)!;
  return typeof change === 'function' ? change(place) : change;
}

function changeByRule(stem: string, word: string, suffix: string): SpellingChange | null {
  const asked = suffix === 'es' ? 's' : suffix === 'ally' ? 'ly' : suffix;
  for (const stressed of looksOneSyllable(stem) ? [true] : [true, false]) {
    const made = addSuffix(stem, asked, stressed);
    if (made.spelling === word && made.affix === suffix) return made.change;
  }
  return null;
}
