import type { Pattern } from '../../analyze/types.ts';

type Test = (pattern: Pattern) => boolean;

const family =
  (...names: readonly string[]): Test =>
  ({ family }) =>
    names.includes(family);
const ids =
  (...wanted: readonly string[]): Test =>
  ({ id }) =>
    wanted.includes(id);

/** The sounds of long vowels, in the signs of the catalogue. */
const LONG: Readonly<Record<string, readonly string[]>> = {
  a: ['EY'],
  e: ['IY'],
  i: ['AY'],
  o: ['OW'],
  u: ['Y.UW', 'UW'],
};
const SHORT: Readonly<Record<string, string>> = { a: 'AE', e: 'EH', i: 'IH', o: 'AA', u: 'AH' };

/**
 * Other names that teachers use for patterns (common practice, no source). The name must be the whole search. Examples:
 * - silent e: vowel-consonant-e and the e of house
 * - r blends: br, cr and dr, but not rope
 */
const SYNONYMS: readonly (readonly [name: RegExp, test: (found: RegExpMatchArray) => Test])[] = [
  [
    /^(?:magic|silent|final|sneaky|bossy|split) e$|^(?:vce|cvce|split digraphs?)$/,
    () =>
      ({ id, family }) =>
        family === 'vowel-consonant-e' || ['silent-e', 'se', 've', 'ze'].includes(id),
  ],
  [/^diphthongs?$/, () => ids('oi', 'oy', 'ou-ow', 'ow-ow')],
  [
    /^plurals?$/,
    () =>
      ({ id }) =>
        /^suffix-(?:s|es|ies|ves)(?:-|$)/.test(id) || /^change-(?:y-to-i|f-to-v)$/.test(id),
  ],
  [/^silent letters?$/, () => family('silent letter')],
  [
    /^(?:initial |beginning )?([lrs])[- ]blends?$/,
    ([, letter]) =>
      ({ family, letters }) =>
        family === 'initial blend' &&
        (letter === 's' ? letters.startsWith('s') && letters !== 'shr' : letters.endsWith(letter!)),
  ],
  [/^(?:beginning|initial|start(?:ing)?) blends?$/, () => family('initial blend')],
  [/^(?:end(?:ing)?|final) blends?$/, () => family('final blend')],
  [
    /^(?:consonant )?(?:blends?|clusters?)$|^adjacent consonants$/,
    () => family('initial blend', 'final blend'),
  ],
  [/^r[- ]controlled(?: vowels?)?$|^bossy r$|^vowels? with r$/, () => family('r-controlled vowel')],
  [/^double (?:consonants?|letters?)$|^doubles$/, () => family('double consonant')],
  [
    /^long ([aeiou])$/,
    ([, letter]) =>
      ({ sounds, family }) =>
        family !== 'r-controlled vowel' &&
        family !== 'suffix' &&
        sounds.some((sound) => LONG[letter!]!.includes(sound)),
  ],
  [
    /^short ([aeiou])$/,
    ([, letter]) =>
      ({ sounds, family }) =>
        family !== 'schwa' && !/suffix|prefix|r-controlled|rime/.test(family) && sounds[0] === SHORT[letter!],
  ],
  [/^vowel (?:pairs?|digraphs?|teams?)$/, () => family('vowel team')],
  [/^endings?$/, () => family('suffix')],
  [/^(?:unstressed|reduced|neutral) vowels?$/, () => family('schwa')],
  [
    /^apostrophes?$/,
    () =>
      ({ id }) =>
        /^(?:contraction|possessive)/.test(id),
  ],
];

/** Returns a test for the patterns that a teachers’ name means; null if the search is not such a name. */
export function findFamilies(typed: string): Test | null {
  for (const [name, test] of SYNONYMS) {
    const found = typed.match(name);
    if (found) return test(found);
  }
  return null;
}
