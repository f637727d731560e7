import { catalogue } from '../../analyze/index.ts';
import type { Pattern } from '../../analyze/types.ts';
import { soundName } from '../../marks/sound-names.ts';
import { findFamilies } from './pattern-synonyms.ts';

/**
 * The patterns of the catalogue that can be taught. `irregular` is left out, because it names everything that no
 * pattern covers.
 */
export const teachable: readonly Pattern[] = catalogue.filter(({ id }) => id !== 'irregular');

/**
 * Returns the patterns that fit a teacher’s search, best first. A search can be:
 * - letters (`ai`, `a_e`, `-ing`, `un-`)
 * - a sound, between slashes or as dictionaries write it (`/k/`, `ā`, `long a`)
 * - a teachers’ name for patterns (`magic e`, `r blends`)
 * - a key word or an example (`rain`)
 * - words of the label or family (`digraph`)
 *
 * A pattern must fit every word of the search. Of patterns that fit equally well, the more common pattern comes first.
 * For ss, dress comes before tissue. For u, mud comes before circus. An empty search returns all patterns in catalogue
 * order.
 */
export function searchPatterns(typed: string): readonly Pattern[] {
  const wanted = typed
    .toLowerCase()
    .replace(/[“”"(),;]/g, ' ')
    .replace(/[\u2010-\u2015]/g, '-')
    .trim();
  const words = wanted.split(/\s+/).filter((word) => word !== '');
  const isNamed = findFamilies(wanted);
  return teachable
    .map((pattern, row) => ({ pattern, row, rank: isNamed?.(pattern) ? NAMED : rankAll(pattern, words) }))
    .filter(({ rank }) => rank > 0)
    .toSorted((a, b) => b.rank - a.rank || rareness(a.pattern) - rareness(b.pattern) || a.row - b.row)
    .map(({ pattern }) => pattern);
}

/** The rank of a pattern that a teachers’ name means. Such a name counts for more than letters or words of a label. */
const NAMED = 50;

/**
 * Families whose patterns occur in most words. `RARE` has the families whose patterns occur in few words. All other
 * families are in between.
 */
const COMMON: ReadonlySet<string> = new Set([
  'consonant',
  'short vowel',
  'digraph',
  'double consonant',
  'vowel-consonant-e',
]);
const RARE: ReadonlySet<string> = new Set(['other vowel', 'schwa', 'rime', 'silent letter']);

/**
 * Returns how rare a pattern is, 0 for the most common. A second sound of the same letters (`ss-sh` beside `ss`, `u-w`
 * beside `short-u`) counts as rarer than the first sound.
 */
function rareness({ id, family, letters }: Pattern): number {
  const isSecond =
    family === 'consonant' ? !letters.split(' ').includes(id) : firstOf.get(`${family} ${letters}`) !== id;
  return (COMMON.has(family) ? 0 : RARE.has(family) ? 2 : 1) + (isSecond ? 3 : 0);
}

/**
 * The most common sound of each spelling within a family: the row named by the letters alone, or else the first row in
 * the catalogue.
 */
const firstOf = new Map<string, string>();
for (const { id, family, letters } of teachable) {
  const key = `${family} ${letters}`;
  if (!firstOf.has(key) || id === letters) firstOf.set(key, id);
}

function rankAll(pattern: Pattern, words: readonly string[]): number {
  if (words.length === 0) return 1;
  const ranks = words.map((word) => rank(pattern, word));
  return ranks.includes(0) ? 0 : ranks.reduce((sum, one) => sum + one, 0);
}

function rank({ id, family, label, letters, sounds, keyWord, examples }: Pattern, word: string): number {
  if (word.length > 2 && word.startsWith('/') && word.endsWith('/')) {
    return hasSound(sounds, word.slice(1, -1)) ? 6 : 0;
  }
  const spelt = word.replace(/^-+|-+$/g, '').replace(/^([a-z])-e$/, '$1_e');
  if (spelt !== '' && letters.split(' ').includes(spelt)) {
    if (isAffixFamily(family)) return /^-|-$/.test(word) ? 8 : 5;
    return 7;
  }
  if (id === word || keyWord === word) return 6;
  if (hasSound(sounds, word)) return 5;
  if (examples.includes(word)) return 4;
  const text = `${label} ${family} ${id.replaceAll('-', ' ')}`.toLowerCase();
  if (text.split(/[\s-]+/).some((part) => part.startsWith(word))) return 3;
  return word.length > 2 && text.includes(word) ? 1 : 0;
}

/**
 * Returns whether one of the sounds has the wanted name. A name is the dictionary’s sign (`ā`, `k`). Plain letters find
 * only sounds that these letters tell apart.
 */
function hasSound(sounds: readonly string[], wanted: string): boolean {
  return sounds.some((sound) => soundName(sound) === wanted.normalize('NFC'));
}

function isAffixFamily(family: string): boolean {
  return family === 'suffix' || family === 'prefix';
}
