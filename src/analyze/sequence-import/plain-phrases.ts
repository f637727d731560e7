import type { PatternId } from '../types.ts';

const vce = ['a_e', 'e_e', 'i_e', 'o_e', 'u_e-oo', 'u_e-yoo'];
const longs = ['long-a', 'long-e', 'long-i', 'long-o', 'long-u-yoo', 'long-u-oo'];

/** Phrases that teach what they say and take no list, names divided by a bar, in the singular. */
export const plainPhrases: Readonly<Record<string, readonly PatternId[]>> = {
  'closed|closed syllable': ['type-closed'],
  'open|open syllable': ['type-open', ...longs],
  'vce syllable|vowel consonant e syllable|silent e syllable': ['type-vce', ...vce],
  'vowel team syllable': ['type-team'],
  'r controlled syllable': ['type-r'],
  'consonant le|consonant le syllable|c le|final stable syllable le': ['consonant-le'],
  'two syllable|2 syllable|two syllable word|2 syllable word|disyllabic|bisyllabic': ['syllables-2'],
  'three syllable|3 syllable|three syllable word|3 syllable word': ['syllables-3'],
  'multisyllabic|multi syllabic|multisyllable|multi syllable|polysyllabic|longer word': [
    'syllables-2',
    'syllables-3',
  ],
  'division of word into syllable|syllable division|dividing word into syllable': [
    'syllables-2',
    'type-closed',
  ],
  'vc cv|vccv': ['syllables-2', 'type-closed'],
  'compound word|compound|compounding': ['compound'],
  'contraction|contracted form|short form': ['contraction'],
  'possessive|possessive apostrophe|apostrophe s|possessive s': ['possessive'],
  'doubling rule|double the final consonant|doubling|1 1 1 rule|1 1 1 doubling rule|doubling the final consonant|double final consonant|double the consonant|doubling the consonant|doubling final consonant':
    ['change-double'],
  'drop e|drop the e|drop e rule|e drop|drop final e|drop the final e|dropping e|dropping the e|drop silent e|drop the silent e|dropping the final e':
    ['change-drop-e'],
  'y to i|change y to i|y to i rule|change the y to i|changing y to i|changing the y to i': ['change-y-to-i'],
  'consonant y|y as a consonant': ['y'],
  'silent k': ['kn'],
  'silent w': ['wr'],
  'silent b': ['mb', 'bt'],
  'silent g': ['gn'],
  'silent h': ['h-silent', 'gh-g', 'rh'],
  'silent l': ['l-silent'],
  'silent t': ['st'],
  'silent p': ['ps'],
  'silent c': ['sc'],
  'silent n': ['mn'],
  'silent u': ['gu'],
  'silent gh': ['gh-silent'],
  'hard c and g|hard c and hard g|hard c g': ['c', 'g'],
  'hard and soft c': ['c', 'soft-c'],
  'hard and soft g': ['g', 'soft-g'],
  'soft and hard c': ['c', 'soft-c'],
  'soft and hard g': ['g', 'soft-g'],
  'soft c and g|soft c and soft g|soft c g': ['soft-c', 'soft-g'],
};
