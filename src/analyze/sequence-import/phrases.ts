import { catalogue } from '../catalogue/catalogue.ts';
import type { PatternId } from '../types.ts';

/** What a phrase of the trade teaches, and which patterns a list of letters beside it can mean. */
export interface Phrase {
  readonly ids: readonly PatternId[];
  /** False: the phrase leaves open which of many are meant. */
  readonly sure: boolean;
  /** Null: no list goes with it (closed syllables). */
  readonly within: ReadonlySet<PatternId> | null;
}

const family = (...names: readonly string[]) =>
  catalogue.filter((row) => names.includes(row.family)).map(({ id }) => id);
const starting = (text: string) => catalogue.filter(({ id }) => id.startsWith(text)).map(({ id }) => id);
const startsWith = (second: string) =>
  family('initial blend').filter((id) => id.length === 8 && (id.at(-1) === second || id.at(-2) === second));
const saying = (...sounds: readonly string[]) =>
  catalogue.filter((row) => row.sounds.some((sound) => sounds.includes(sound))).map(({ id }) => id);

const vce = ['a_e', 'e_e', 'i_e', 'o_e', 'u_e-oo', 'u_e-yoo'];
const shorts = ['short-a', 'short-e', 'short-i', 'short-o', 'short-u'];
const longs = ['long-a', 'long-e', 'long-i', 'long-o', 'long-u-yoo', 'long-u-oo'];
const rVowels = ['ar', 'or', 'er', 'ir', 'ur'];
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

/** Phrases that teach what they say and take no list. */
const plain: Readonly<Record<string, readonly PatternId[]>> = {
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
  'y as a vowel|vowel y|final y|y as vowel|y at the end': ['y-long-i', 'y-long-e'],
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

/** Headings: what they teach on their own, whether that is sure, and what a list beside them can mean. */
const headings: readonly (readonly [string, readonly PatternId[], boolean, readonly PatternId[]])[] = [
  ['short vowel|all short vowel', shorts, true, family('short vowel')],
  ['long vowel', longs, false, [...family('long vowel', 'vowel-consonant-e', 'vowel team'), 'y_e']],
  ['vowel', shorts, false, family('short vowel', 'long vowel', ...vowelFamilies)],
  ['consonant|single consonant|all consonant', consonants, true, family('consonant')],
  [
    'alphabet|letter of the alphabet|all letter|letter sound',
    [...consonants, ...shorts],
    true,
    [...consonants, ...shorts],
  ],
  [
    'vce|cvce|vowel consonant e|silent e|final e|split digraph|split vowel digraph|v e|v_e|vce long vowel|long vowel vce|silent final e|final silent e',
    vce,
    true,
    family('vowel-consonant-e'),
  ],
  [
    'digraph|consonant digraph|h digraph',
    digraphs,
    false,
    [...family('digraph', 'double consonant'), 'n-ng', 'qu', 'kn', 'wr', 'gn', 'gh-g', 'wh-h', 'mb'],
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
    'double consonant|double letter|double|doubled consonant',
    ['ff', 'll', 'ss', 'zz'],
    false,
    [...family('double consonant'), 'ck'],
  ],
  [
    'vowel team|vowel digraph|vowel pair|long vowel team|long vowel digraph',
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
    'r controlled|r controlled vowel|r vowel|vowel r|vowel plus r',
    rVowels,
    false,
    family('r-controlled vowel'),
  ],
  ['soft|soft consonant', ['soft-c', 'soft-g'], true, ['soft-c', 'soft-g']],
  ['soft c', ['soft-c'], true, ['soft-c']],
  ['soft g', ['soft-g'], true, ['soft-g', 'dge']],
  ['hard', ['c', 'g'], true, ['c', 'g', 'k']],
  ['hard c', ['c'], true, ['c']],
  ['hard g', ['g'], true, ['g']],
  ['silent letter|silent consonant|silent', ['kn', 'wr', 'gn', 'mb'], false, silent],
  [
    'initial blend|beginning blend|initial consonant blend|beginning consonant blend|initial cluster|initial consonant cluster|start blend',
    start.filter((id) => id !== 'start-other'),
    true,
    start,
  ],
  [
    'final blend|ending blend|end blend|final consonant blend|ending consonant blend|final cluster|final consonant cluster',
    end.filter((id) => id !== 'end-other'),
    true,
    [...end, 'n-ng'],
  ],
  [
    'blend|consonant blend|consonant cluster|cluster|adjacent consonant',
    [...start, ...end],
    false,
    [...start, ...end, 'n-ng'],
  ],
  ['l blend|blend with l', startsWith('l'), true, start],
  ['r blend|blend with r', startsWith('r'), true, start],
  ['s blend|blend with s', [...'cmnpkwt'].map((c) => `start-s${c}`), true, start],
  [
    'three letter blend|3 letter blend|three consonant blend|3 consonant blend|triple blend',
    ['start-scr', 'start-spl', 'start-spr', 'start-squ', 'start-str', 'start-shr', 'start-thr'],
    false,
    [...start, ...end],
  ],
  ['schwa', schwas, true, family('schwa')],
  [
    'suffix|ending|suffixe|word ending|vowel suffix|consonant suffix|derivational suffix|inflectional suffix|inflectional ending|inflection|inflected ending',
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
  ['prefix|prefixe', ['prefix-un', 'prefix-re', 'prefix-dis'], false, family('prefix')],
  [
    'affix|affixe',
    [...starting('prefix-un'), 'suffix-ing'],
    false,
    family('prefix', 'suffix', 'final syllable'),
  ],
  ['cvc|cvc word', shorts, false, family('short vowel', 'consonant')],
  ['ccvc|ccvc word', start.filter((id) => id !== 'start-other'), false, start],
  ['cvcc|cvcc word', end.filter((id) => id !== 'end-other'), false, end],
  ['plural|plural ending', ['suffix-s', 'suffix-es'], true, ['suffix-s', 'suffix-es', 'change-y-to-i']],
  ['past tense|past tense ending', pastTense, true, pastTense],
  ['short a', ['short-a'], true, saying('AE')],
  ['short e', ['short-e'], true, saying('EH')],
  ['short i', ['short-i'], true, saying('IH', 'IX')],
  ['short o', ['short-o'], true, saying('AA')],
  ['short u', ['short-u'], true, saying('AH')],
  ['long a', ['long-a'], false, saying('EY')],
  ['long e', ['long-e'], false, saying('IY')],
  ['long i', ['long-i'], false, saying('AY')],
  ['long o', ['long-o'], false, saying('OW')],
  ['long u', ['long-u-yoo', 'long-u-oo'], false, saying('UW', 'Y.UW')],
  ['long oo', ['oo-moon'], true, saying('UW', 'Y.UW')],
  ['short oo', ['oo-book'], true, saying('UH')],
];

/** The most words a phrase has. */
export const LONGEST_PHRASE = 6;

const phrases = new Map<string, Phrase>();
for (const [names, ids] of Object.entries(plain)) {
  for (const name of names.split('|')) phrases.set(name, { ids, sure: true, within: null });
}
for (const [names, ids, sure, within] of headings) {
  for (const name of names.split('|')) phrases.set(name, { ids, sure, within: new Set(within) });
}

const firstWords = new Set([...phrases.keys()].map((name) => name.split(' ')[0]!));

/** Whether any phrase begins with a word: spares looking for longer ones. */
export function beginsPhrase(word: string): boolean {
  return firstWords.has(singular(word));
}

/** A phrase by its words in lower case, without hyphens; "syllables" is found as "syllable". */
export function findPhrase(words: readonly string[]): Phrase | null {
  return phrases.get(words.map(singular).join(' ')) ?? null;
}

function singular(word: string): string {
  return word.length > 3 && word.endsWith('s') && !word.endsWith('ss') ? word.slice(0, -1) : word;
}
