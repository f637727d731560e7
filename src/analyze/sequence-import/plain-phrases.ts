import type { PatternId } from '../types.ts';

/** Phrases that need no explanation and take no list. Their names are divided by a bar and are in the singular. */
export const plainPhrases: Readonly<Record<string, readonly PatternId[]>> = {
  'consonant le|consonant le syllable|c le|c le syllable|final stable syllable le|consonant plus le|final le|le syllable|consonant l e':
    ['consonant-le'],
  'two syllable|2 syllable|two syllable word|2 syllable word|disyllabic|bisyllabic': ['syllables-2'],
  'three syllable|3 syllable|three syllable word|3 syllable word|trisyllabic|four syllable|4 syllable|four syllable word|4 syllable word':
    ['syllables-3'],
  'multisyllabic|multi syllabic|multisyllable|multi syllable|polysyllabic|longer word': [
    'syllables-2',
    'syllables-3',
  ],
  'compound word|compound|compounding|compound noun|joined word': ['compound'],
  'double the final consonant|1 1 1 rule|1 1 1 doubling rule|1 1 1 doubling|doubling the final consonant|double the consonant|double the last consonant|doubling the last letter|double the last letter|doubling the consonant|doubling final consonant|consonant doubling|consonant doubling rule':
    ['change-double'],
  'drop e|drop the e|drop e rule|drop the e rule|silent e rule|dropping the silent e|e drop|drop final e|drop the final e|dropping e|dropping the e|dropping rule|drop rule|e rule|drop silent e|drop the silent e|dropping the final e':
    ['change-drop-e'],
  'y to i|y rule|change rule|changing rule|change y to i|y to i rule|change y to i rule|change the y to i rule|changing y into i|change y into i|y changes to i|change the y to i|changing y to i|changing the y to i':
    ['change-y-to-i'],
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
  'hard and soft th|soft and hard th': ['th', 'th-voiced'],
  'six syllable type|6 syllable type|all six syllable type|all 6 syllable type|all syllable type': [
    'type-closed',
    'type-open',
    'type-vce',
    'type-team',
    'type-r',
    'consonant-le',
  ],
  'hard and soft c': ['c', 'soft-c'],
  'hard and soft g': ['g', 'soft-g'],
  'soft and hard c': ['c', 'soft-c'],
  'soft and hard g': ['g', 'soft-g'],
  'hard and soft c and g|hard soft c and g|hard and soft c g|soft and hard c and g|soft and hard c g|two sound of c and g|both sound of c and g':
    ['c', 'soft-c', 'g', 'soft-g'],
  'inflected ending with spelling change|inflectional ending with spelling change|ending with spelling change|suffix with spelling change|ending with a spelling change|adding ending with spelling change|spelling change with ending|spelling change':
    ['change-double', 'change-drop-e', 'change-y-to-i'],
};
