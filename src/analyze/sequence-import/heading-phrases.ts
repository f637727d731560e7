import { catalogue, coarseRows } from '../catalogue/catalogue.ts';
import type { PatternId } from '../types.ts';

const family = (...names: readonly string[]) =>
  coarseRows.filter((row) => names.includes(row.family)).map(({ id }) => id);
const starting = (text: string) => catalogue.filter(({ id }) => id.startsWith(text)).map(({ id }) => id);
const startsWith = (second: string) =>
  family('initial blend').filter((id) => id.length === 8 && (id.at(-1) === second || id.at(-2) === second));
const saying = (...sounds: readonly string[]) =>
  coarseRows.filter((row) => row.sounds.some((sound) => sounds.includes(sound))).map(({ id }) => id);

const vce = ['a_e', 'e_e', 'i_e', 'o_e', 'u_e-oo', 'u_e-yoo'];
const longs = ['long-a', 'long-e', 'long-i', 'long-o', 'long-u-yoo', 'long-u-oo'];
const shorts = ['short-a', 'short-e', 'short-i', 'short-o', 'short-u'];
const rVowels = ['ar', 'or', 'er', 'ir', 'ur'];
const longClosed = ['i-long-closed', 'o-long-closed'];
const divisions = ['divide-vc-cv', 'divide-v-cv', 'divide-vc-v', 'divide-v-v'];
const pastTense = ['suffix-ed-t', 'suffix-ed-d', 'suffix-ed-id'];
const schwas = ['schwa-a', 'schwa-e', 'schwa-i', 'schwa-o', 'schwa-u', 'weak-e'];
const consonants = [...'bcdfghjklmnprstvwxyz', 'qu'];
const digraphs = ['sh', 'ch', 'th', 'th-voiced', 'wh', 'ck', 'ng'];
const teams = [
  'ai',
  'ay',
  'ee',
  'ea-long-e',
  'oa',
  'ow-long-o',
  'igh',
  'oi',
  'oy',
  'ou-ow',
  'ow-ow',
  'oo-moon',
  'oo-book',
];
const vowelFamilies = ['vowel team', 'r-controlled vowel', 'vowel-consonant-e', 'other vowel'];
const start = family('initial blend');
const end = family('final blend');
const silent = [...family('silent letter'), 'sc', 'st'];

const startsHaving = (letter: string) => start.filter((id) => id.slice('start-'.length).includes(letter));

const blendsAt = (...places: readonly string[]) =>
  places
    .flatMap((place) =>
      ['', ' consonant'].flatMap((kind) => ['blend', 'cluster'].map((noun) => `${place}${kind} ${noun}`)),
    )
    .join('|');

/**
 * Headings, with their names divided by a bar. Each has the patterns it teaches alone, whether these are sure, and the
 * patterns that a list beside it can mean.
 */
export const headingPhrases: readonly (readonly [
  string,
  readonly PatternId[],
  boolean,
  readonly PatternId[],
])[] = [
  ['closed|closed syllable', ['type-closed'], true, family('short vowel')],
  ['open|open syllable|open vowel|open word', ['type-open', ...longs], true, [...longs, 'y-long-i']],
  [
    'dividing longer word|dividing multisyllabic word|dividing multi syllabic word|dividing two syllable word|dividing 2 syllable word|dividing big word|dividing long word|breaking word into syllable|breaking up word|breaking apart word|syllabication|syllabification|syllable division|division of word into syllable|dividing word into syllable|dividing word|dividing syllable|dividing|divide|divide word|splitting word|split word|word division|division|division pattern|syllable division pattern|syllable division rule|division rule|syllable pattern',
    [],
    false,
    divisions,
  ],
  ['vc cv|vccv|vc ccv|vcc cv|vcccv', ['divide-vc-cv'], true, ['divide-vc-cv']],
  ['v cv', ['divide-v-cv'], true, ['divide-v-cv']],
  ['vc v', ['divide-vc-v'], true, ['divide-vc-v']],
  ['v v', ['divide-v-v'], true, ['divide-v-v']],
  ['vcv', ['divide-v-cv', 'divide-vc-v'], true, ['divide-v-cv', 'divide-vc-v']],
  [
    'vce syllable|cvce syllable|v e syllable|vowel consonant e syllable|vowel consonant silent e syllable|silent e syllable|final e syllable|magic e syllable|split digraph syllable',
    ['type-vce', ...vce],
    true,
    family('vowel-consonant-e'),
  ],
  [
    'vowel team syllable|team syllable|vowel digraph syllable|vowel pair syllable|double vowel syllable|diphthong syllable',
    ['type-team'],
    true,
    family('vowel team'),
  ],
  [
    'r controlled syllable|r controlled vowel syllable|vowel r syllable|r syllable|r influenced syllable|r coloured syllable|r colored syllable|r vowel syllable',
    ['type-r'],
    true,
    family('r-controlled vowel'),
  ],
  [
    'contraction|contracted form|short form|apostrophe for contraction|apostrophe for omission|apostrophe for missing letter|apostrophe in contraction',
    ['contraction'],
    true,
    ['contraction', ...starting('contraction-')],
  ],
  [
    'possessive|possessive apostrophe|apostrophe s|possessive s|possessive noun|apostrophe for possession|apostrophe to show possession|apostrophe of possession|apostrophe for ownership|possession',
    ['possessive'],
    true,
    ['possessive'],
  ],
  [
    'suffix rule|suffixing rule|rule for adding suffix|rule for suffix',
    ['change-double', 'change-drop-e', 'change-y-to-i'],
    false,
    ['change-double', 'change-drop-e', 'change-y-to-i'],
  ],
  ['doubling|doubling rule', ['change-double'], true, ['change-double', 'ff', 'll', 'ss', 'zz', 'ck']],
  // These headings leave the spellings open. Without a list the teacher is asked.
  [
    'variant vowel|alternative vowel|other vowel|complex vowel|ambiguous vowel|vowel variant|other vowel spelling|alternative spelling|alternative pronunciation|other vowel pattern|variant vowel spelling',
    [],
    false,
    [...family('other vowel', 'vowel team', 'r-controlled vowel')],
  ],
  [
    'rime|word family|onset and rime|word ending pattern|nasal ending|nasal blend|nasal rime',
    [],
    false,
    [...starting('rime-'), 'ng', 'n-ng', ...shorts, 'a-before-l', 'al-aw', ...longClosed],
  ],
  ['short vowel|all short vowel|short sound|short vowel sound', shorts, true, family('short vowel')],
  [
    'short vowel ending|ending after a short vowel|ending after short vowel|short vowel ending spelling',
    [],
    false,
    ['ck', 'tch', 'dge', 'ff', 'll', 'ss', 'zz'],
  ],
  ['long vowel', longs, false, [...family('long vowel', 'vowel-consonant-e', 'vowel team'), 'y_e']],
  ['vowel', shorts, false, family('short vowel', 'long vowel', ...vowelFamilies)],
  ['consonant|single consonant|all consonant', consonants, true, family('consonant')],
  [
    'alphabet|a-z|letter name and sound|letter name and letter sound|all letter of the alphabet|letter of the alphabet|all letter|letter sound',
    [...consonants, ...shorts],
    true,
    [...consonants, ...shorts],
  ],
  ['letter name', [], false, [...consonants, ...shorts]],
  [
    'magic e|bossy e|vce|cvce|vowel consonant e|silent e|final e|split digraph|split vowel|split vowel digraph|e at the end|v e|v_e|vce long vowel|long vowel vce|silent final e|final silent e',
    vce,
    true,
    family('vowel-consonant-e'),
  ],
  [
    'digraph|consonant digraph|h digraph|two letter consonant|two letter consonant sound|consonant pair|consonant team',
    digraphs,
    false,
    [
      ...family('digraph', 'double consonant', 'vowel team'),
      'n-ng',
      'qu',
      'kn',
      'wr',
      'gn',
      'gh-g',
      'wh-h',
      'mb',
    ],
  ],
  [
    'ending digraph|final digraph',
    ['ck', 'ng', 'sh', 'ch', 'th'],
    false,
    family('digraph', 'double consonant'),
  ],
  [
    'trigraph',
    ['tch', 'dge'],
    false,
    [
      'tch',
      'dge',
      'igh',
      'air',
      'ear-eer',
      'ear-air',
      'ear-er',
      'are',
      'ore',
      'ure',
      'eer',
      'oar',
      'oor',
      'ire',
      'ere-eer',
      'ere-air',
    ],
  ],
  [
    'floss|floss rule|doubled letter|doubled final letter|double final letter|final double letter|final doubled consonant|doubled end consonant|twin consonant|consonant double|consonant doublet|doublet|doubled final|double final|double consonant|double letter|double|doubled consonant|double final consonant|doubled final consonant|final double consonant|double consonant at the end',
    ['ff', 'll', 'ss', 'zz'],
    false,
    [...family('double consonant'), 'ck'],
  ],
  [
    'vowel team|vowel digraph|vowel pair|team|long vowel team|long vowel digraph',
    teams,
    false,
    family('vowel team', 'r-controlled vowel'),
  ],
  [
    'diphthong',
    ['oi', 'oy', 'ou-ow', 'ow-ow'],
    true,
    ['oi', 'oy', 'ou-ow', 'ow-ow', 'au', 'aw', 'oo-moon', 'oo-book', 'ew-oo', 'ew-yoo'],
  ],
  [
    'r contr|bossy r|r cont|r contr vowel|r controlled|r controlled vowel|r influenced|r influenced vowel|r colored vowel|r coloured vowel|r vowel|vowel r|vowel plus r',
    rVowels,
    false,
    family('r-controlled vowel'),
  ],
  [
    'soft|soft consonant|soft sound|soft c and g|soft c and soft g|soft c g|soft c soft g',
    ['soft-c', 'soft-g'],
    true,
    ['soft-c', 'soft-g', 'dge'],
  ],
  ['soft c', ['soft-c'], true, ['soft-c']],
  ['soft g', ['soft-g'], true, ['soft-g', 'dge']],
  ['hard', ['c', 'g'], true, ['c', 'g', 'k']],
  ['hard c', ['c'], true, ['c']],
  ['hard g', ['g'], true, ['g']],
  ['silent letter|silent consonant|silent|quiet letter|mute letter', ['kn', 'wr', 'gn', 'mb'], false, silent],
  [
    blendsAt('initial', 'beginning', 'start', 'starting', 'onset'),
    start.filter((id) => id !== 'start-other'),
    true,
    start,
  ],
  [blendsAt('final', 'ending', 'end'), end.filter((id) => id !== 'end-other'), true, [...end, 'n-ng']],
  [
    'blend|consonant blend|consonant cluster|cluster|adjacent consonant',
    [...start, ...end].filter((id) => !id.endsWith('-other')),
    false,
    [...start, ...end, 'n-ng'],
  ],
  [
    'two letter blend|2 letter blend|two consonant blend|2 consonant blend|two letter cluster',
    [...start, ...end].filter((id) => /^(?:start|end)-[a-z]{2}$/.test(id)),
    false,
    [...start, ...end, 'n-ng'],
  ],
  ['l blend|blend with l', startsWith('l'), true, startsHaving('l')],
  ['r blend|blend with r', startsWith('r'), true, startsHaving('r')],
  [
    'l and r blend|blend with l and r|beginning blend with l and r|initial blend with l and r',
    [...startsWith('l'), ...startsWith('r')],
    true,
    [...startsHaving('l'), ...startsHaving('r')],
  ],
  ['s blend|blend with s', [...'cmnpkltw'].map((c) => `start-s${c}`), true, startsHaving('s')],
  ['apostrophe', ['contraction', 'possessive'], false, ['contraction', 'possessive']],
  [
    'three letter blend|3 letter blend|three consonant blend|3 consonant blend|triple blend',
    ['start-scr', 'start-spl', 'start-spr', 'start-squ', 'start-str', 'start-shr', 'start-thr'],
    false,
    [...start, ...end],
  ],
  [
    'schwa in unaccented syllable|schwa in unstressed syllable|schwa in the unstressed syllable|schwa in an unstressed syllable|schwa in weak syllable|schwa|schwa vowel|schwa sound|weak vowel|unstressed vowel',
    schwas,
    true,
    // The weak e of before is not a schwa spelt e.
    [
      ...family('schwa').filter((id) => id !== 'weak-e'),
      'final-el',
      'final-al',
      'final-il',
      'final-et',
      'final-ent',
    ],
  ],
  [
    'suffix|suffixe|vowel suffix|consonant suffix|derivational suffix|inflectional suffix|inflectional ending|inflection|inflected ending',
    [
      'suffix-s',
      'suffix-es',
      'suffix-ed-t',
      'suffix-ed-d',
      'suffix-ed-id',
      'suffix-ing',
      'suffix-er',
      'suffix-est',
    ],
    false,
    family('suffix', 'final syllable'),
  ],
  [
    'final syllable|final stable syllable|stable final syllable',
    ['tion', 'sion-sh', 'sion-zh', 'ture', 'consonant-le'],
    false,
    [...family('final syllable', 'consonant-le')],
  ],
  ['root|latin root|greek root|word root|base and root', [], false, [...starting('root-')]],
  // These headings do not say which of many affixes is meant. Without a list the teacher is asked.
  ['prefix|prefixe', [], false, starting('prefix-')],
  [
    'affix|affixe',
    [...starting('prefix-un'), 'suffix-ing'],
    false,
    family('prefix', 'suffix', 'final syllable'),
  ],
  ['cvc|cvc word', shorts, false, family('short vowel', 'consonant')],
  ['ccvc|ccvc word|cccvc|cccvc word', start.filter((id) => id !== 'start-other'), false, start],
  [
    'ccvcc|ccvcc word|ccvcc and cccvc word|cccvcc|cccvcc word',
    [...start, ...end].filter((id) => !id.endsWith('-other')),
    false,
    [...start, ...end],
  ],
  ['cvcc|cvcc word', end.filter((id) => id !== 'end-other'), false, end],
  [
    'y as a vowel|vowel y|final y|y as vowel|y at the end',
    ['y-long-i', 'y-long-e'],
    true,
    ['y-long-i', 'y-long-e', 'y-short-i'],
  ],
  [
    'closed syllable with long vowel|closed syllable with a long vowel|closed syllable with long vowel sound|closed syllable with a long vowel sound|closed syllable that say long vowel|closed syllable exception|exception to closed syllable|exception to the closed syllable|exception to closed syllable rule|exception to the closed syllable rule|long vowel in closed syllable|long vowel in a closed syllable|long closed syllable',
    longClosed,
    true,
    longClosed,
  ],
  [
    'plural|plural ending|plural noun|regular plural',
    ['suffix-s', 'suffix-es'],
    true,
    ['suffix-s', 'suffix-es', 'change-y-to-i', 'change-f-to-v'],
  ],
  ['past tense|past tense ending|past tense verb|regular past tense', pastTense, true, pastTense],
  ['short a', ['short-a'], true, saying('AE')],
  ['short e', ['short-e'], true, saying('EH')],
  ['short i', ['short-i'], true, saying('IH', 'IX')],
  ['short o', ['short-o'], true, saying('AA')],
  ['short u', ['short-u'], true, saying('AH')],
  ...Object.entries({ a: ['EY'], e: ['IY'], i: ['AY'], o: ['OW'], u: ['UW', 'Y.UW'] }).map(
    ([vowel, sounds]) =>
      [
        ['', ' team', ' spelling', ' digraph', ' vowel team', ' sound']
          .map((word) => `long ${vowel}${word}`)
          .join('|'),
        longs.filter((id) => id.startsWith(`long-${vowel}`)),
        false,
        saying(...sounds),
      ] as const,
  ),
  ['long oo', ['oo-moon'], true, saying('UW')],
  ['short oo', ['oo-book'], true, saying('UH')],
];
