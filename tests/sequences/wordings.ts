import { catalogue } from '../../src/analyze/catalogue/catalogue.ts';
import type { Pattern } from '../../src/analyze/types.ts';

/** A text that a teacher may write for a row of the catalogue, and the readings that are right for the text. */
export interface Wording {
  /** The kind of wording, such as `letters as in word`. */
  readonly kind: string;
  readonly text: string;
  /** A right reading has all of `must`, at least one of `any` (if there are any), and nothing beyond these and `may`. */
  readonly must: readonly string[];
  readonly any?: readonly string[];
  readonly may?: readonly string[];
}

/** Teachers’ names for a sound, in words and between slashes. Common practice, no source. */
const names: Readonly<Record<string, readonly string[]>> = {
  EY: ['long a', '/ā/'],
  IY: ['long e', '/ē/'],
  AY: ['long i', '/ī/'],
  OW: ['long o', '/ō/'],
  UW: ['long oo', '/oo/'],
  'Y.UW': ['long u', '/yoo/'],
  AE: ['short a', '/ă/'],
  EH: ['short e', '/ĕ/'],
  IH: ['short i', '/ĭ/'],
  AA: ['short o', '/ŏ/'],
  AH: ['short u', '/ŭ/'],
  UH: ['short oo', '/oo/'],
  AO: ['/aw/'],
  AW: ['/ow/', '/ou/'],
  OY: ['/oi/', '/oy/'],
  'AA.R': ['/ar/'],
  'AO.R': ['/or/'],
  ER: ['/er/'],
  'EH.R': ['/air/'],
  'IH.R': ['/ear/', '/eer/'],
  'SH.AX.N': ['/shun/'],
  'ZH.AX.N': ['/zhun/'],
  ...Object.fromEntries(
    'B D F G HH:h JH:j K L M N P R S T V W Y Z SH CH TH DH:th NG K.S:ks K.W:kw ZH'
      .split(' ')
      .map((one) => one.split(':'))
      .map(([sound = '', name = sound.toLowerCase()]) => [sound, [`/${name}/`]]),
  ),
};

const soundFamilies =
  /^(?:consonant|digraph|double consonant|short vowel|vowel-consonant-e|long vowel|other vowel|vowel team|r-controlled vowel|soft c and g|silent letter)$/;

/** Rows whose sounds no teacher lists: weak sounds, and the sound of a letter that is hardly heard. */
const unlisted =
  /weak|^(?:i-y|u-w|silent-e|u-oor|a-air|w-silent|h-silent|gh-silent|l-silent|o-aw|o_e-aw|re-er|a-ah|yr-ire|o_e-oo|a-long-closed|i_e-long-e|t-ch|d-j|s-zh|x-gz|n-ng)$/;

/** Letters whose two sounds count as one for teachers, as in rule and cube. */
const pairs = [
  ['u_e-oo', 'u_e-yoo'],
  ['ue-oo', 'ue-yoo'],
  ['ew-oo', 'ew-yoo'],
  ['long-u-oo', 'long-u-yoo'],
  ['suffix-ed-t', 'suffix-ed-d', 'suffix-ed-id'],
  ['sion-sh', 'sion-zh'],
  ['suffix-s', 'suffix-s-s', 'suffix-s-z'],
  ['suffix-es', 'suffix-es-iz'],
];
const withPair = (id: string) => pairs.find((pair) => pair.includes(id)) ?? [id];

function soundRow(row: Pattern): Wording[] {
  const letters = row.letters.split(' ')[0]!;
  const [key = '', ...others] = [...new Set([row.keyWord, ...row.examples])].filter(
    (word) => /^[a-z]{2,}$/.test(word) && word.split(letters).length < 3,
  );
  const must = [row.id];
  const may = withPair(row.id);
  const other = others[0] ?? key;
  const shown: Wording[] = [
    ['letters as in word', `${letters} as in ${key}`],
    ['letters, as in word', `${letters}, as in ${key}`],
    ['letters (word)', `${letters} (${key})`],
    ['letters (words)', `${letters} (${key}, ${other})`],
    ['letters (as in word)', `${letters} (as in ${key})`],
    ['letters like word', `${letters} like ${key}`],
    ['letters as in word and word', `${letters} as in ${key} and ${other}`],
    ['the letters in word', `the ${letters} in ${key}`],
    ['letters - words', `${letters} - ${key}, ${other}`],
    ['letters: words', `${letters}: ${key}, ${other}`],
    ['quoted letters as in word', `"${letters}" as in "${key}"`],
    ["letters in single quotes as in 'word'", `'${letters}' as in '${key}'`],
    ['spelling letters as in word', `spelling ${letters} as in ${key}`],
    ['letters spelling (word)', `${letters} spelling (${key})`],
    ['letters (e.g. word)', `${letters} (e.g. ${key})`],
    ['letters, e.g. word', `${letters}, e.g. ${key}`],
    ['letters = word', `${letters} = ${key}`],
    ...(letters === 'se' ? [] : [['LETTERS (word)', `${letters.toUpperCase()} (${key})`]]),
    ['letters [word]', `${letters} [${key}]`],
    ['letters sound as in word', `${letters} sound as in ${key}`],
    ['letters for word', `${letters} in words like ${key}`],
    ['words with letters (words)', `words with ${letters} (${key}, ${other})`],
    ['letters words (words)', `${letters} words (${key}, ${other})`],
  ].map(([kind = '', text = '']) => ({ kind, text, must, may }));
  if (key === '') return [];
  // Returns whether a name may be written directly before the letters: "short i u" would mean two vowels.
  const alone = (name: string) => letters.length > 1 || name.startsWith('/') || name.endsWith(` ${letters}`);
  const said: Wording[] = row.sounds.slice(0, 1).flatMap((sound) =>
    (names[sound] ?? []).flatMap((name, i) => {
      const same = catalogue.filter(
        (one) =>
          one.letters.split(' ').includes(letters) &&
          soundFamilies.test(one.family) &&
          one.sounds.some((its) => names[its]?.includes(name)),
      );
      const any = same.flatMap(({ id }) => withPair(id));
      const form = i === 0 && !name.startsWith('/') ? 'name' : '/sound/';
      const all: readonly (readonly [string, string])[] = [
        [`letters says ${form}`, `${letters} says ${name}`],
        [`letters saying ${form}`, `${letters} saying ${name}`],
        [`letters that says ${form}`, `${letters} that says ${name}`],
        [`letters as ${form}`, `${letters} as ${name}`],
        [`letters for ${form}`, `${letters} for ${name}`],
        [`${form} spelled letters`, `${name} spelled ${letters}`],
        [`${form} spelt letters`, `${name} spelt ${letters}`],
        [`${form} spelled with letters`, `${name} spelled with ${letters}`],
        [`${form}: letters`, `${name}: ${letters}`],
        [`${form} (letters)`, `${name} (${letters})`],
        [`letters (${form})`, `${letters} (${name})`],
        [`letters = ${form}`, `${letters} = ${name}`],
        [`letters ${form}`, `${letters} ${name}`],
        [`${form} letters`, `${name} ${letters}`],
        [`letters making ${form}`, `${letters} making ${name}`],
        [`letters makes the ${form} sound`, `${letters} makes the ${name} sound`],
        [`letters with the ${form} sound`, `${letters} with the ${name} sound`],
        [`the ${form} sound spelled letters`, `the ${name} sound spelled ${letters}`],
        [`the ${form} sound of letters`, `the ${name} sound of ${letters}`],
        [`${form} sound: letters`, `${name} sound: ${letters}`],
        [`spelling ${form} with letters`, `spelling ${name} with ${letters}`],
        [`spelling ${form}: letters`, `spelling ${name}: ${letters}`],
        [`${form} - letters`, `${name} - ${letters}`],
        [`other spellings of ${form}: letters`, `other spellings of ${name}: ${letters}`],
        [`${form} spellings: letters`, `${name} spellings: ${letters}`],
        [`letters spells ${form}`, `${letters} spells ${name}`],
        [`letters to spell ${form}`, `${letters} to spell ${name}`],
      ];
      const keyed: readonly (readonly [string, string])[] = [
        [`letters says ${form} (word)`, `${letters} says ${name} (${key})`],
        [`letters says ${form} (words)`, `${letters} says ${name} (${key}, ${other})`],
        [`letters that says ${form} (words)`, `${letters} that says ${name} (${key}, ${other})`],
        [`letters as ${form} (word)`, `${letters} as ${name} (${key})`],
        [`letters as ${form} in word`, `${letters} as ${name} in ${key}`],
        [`${form} spelled letters (word)`, `${name} spelled ${letters} (${key})`],
        [`${form} spelled letters as in word`, `${name} spelled ${letters} as in ${key}`],
        [`letters ${form} as in word`, `${letters} ${name} as in ${key}`],
        [`letters for ${form} (word)`, `${letters} for ${name} (${key})`],
        [`letters making ${form}: words`, `${letters} making ${name}: ${key}, ${other}`],
        [`letters = ${form} (word)`, `${letters} = ${name} (${key})`],
      ];
      return [
        ...all
          .filter(([kind]) => alone(name) || !/^name (?:letters|- letters)$/.test(kind))
          .map(([kind, text]) => ({ kind, text, must: [], any })),
        ...keyed.map(([kind, text]) => ({ kind, text, must, may })),
      ];
    }),
  );
  return unlisted.test(row.id) ? [] : [...shown, ...said];
}

function blendRow(row: Pattern): Wording[] {
  const letters = row.letters;
  if (letters === '') return [];
  const first = row.family === 'initial blend';
  const [key = '', other = key] = row.examples;
  const places = first ? ['initial', 'beginning'] : ['final', 'ending'];
  const marked = first ? `${letters}-` : `-${letters}`;
  return [
    ...(first && catalogue.filter((one) => one.letters === letters && /blend/.test(one.family)).length === 1
      ? [[`letters alone`, letters]]
      : []),
    ['letters with a hyphen', marked],
    ['letters with a hyphen (words)', `${marked} (${key}, ${other})`],
    ['letters as in word', `${letters} as in ${key}`],
    ['place blend letters', `${places[0]} blend ${letters}`],
    ['place blends: letters', `${places[1]} blends: ${letters}`],
    ['place consonant blend: letters', `${places[0]} consonant blend: ${letters}`],
    ['place cluster letters', `${places[0]} cluster ${marked}`],
    ['place blend "letters"', `${places[1]} blend "${letters}"`],
    ['place blend with letters', `${places[1]} blend with ${letters}`],
    ['letters blend at the place', `${letters} blend at the ${first ? 'beginning' : 'end'} of words`],
    ['letters at the place', `${letters} at the ${first ? 'beginning' : 'end'} of a word`],
    ['letters (place)', `${letters} (${places[0]})`],
    ['place letters', `${places[0]} ${letters}`],
    ['letters place blend', `${letters} ${places[0]} blend`],
    ['blend letters (words)', `blend ${letters} (${key}, ${other})`],
    ['letters: words', `${marked}: ${key}, ${other}`],
    [
      'words that place with letters',
      `words that ${first ? 'begin' : 'end'} with ${letters} (${key}, ${other})`,
    ],
  ].map(([kind = '', text = '']) => ({ kind: `blend ${kind}`, text, must: [row.id] }));
}

function affixRow(row: Pattern): Wording[] {
  if (row.kindOf !== undefined) return [];
  const suffix = row.family === 'suffix';
  const name = suffix ? 'suffix' : 'prefix';
  const letters = row.letters.split(' ')[0]!;
  const marked = suffix ? `-${letters}` : `${letters}-`;
  const [key = '', other = key] = row.examples;
  const may = [
    ...withPair(row.id),
    ...(row.id === 'suffix-age' || row.id === 'suffix-ous' ? [row.id.slice(7)] : []),
  ];
  const all = row.id.startsWith('suffix-ed') ? withPair(row.id) : [row.id];
  return [
    ['marked', marked],
    ['name marked', `${name} ${marked}`],
    ['Name marked (words)', `${name} ${marked} (${key}, ${other})`],
    ['the name marked', `the ${name} ${marked}`],
    ['marked name', `${marked} ${name}`],
    ['marked as a name', `${marked} as a ${name}`],
    ['name: marked', `${name}: ${marked}`],
    ['names: marked', `${name}es: ${marked}`.replace('prefixes', 'prefixes')],
    ['name "letters"', `${name} "${letters}"`],
    ['name letters', `${name} ${letters}`],
    ['marked (words)', `${marked} (${key}, ${other})`],
    ['marked as in word', `${marked} as in ${key}`],
    ['marked: words', `${marked}: ${key}, ${other}`],
    ['words with marked', `words with ${marked}`],
    ['words with the name marked', `words with the ${name} ${marked}`],
    ['adding marked', `adding ${marked}`],
    ['place marked', suffix ? `words ending in ${marked}` : `words beginning with ${marked}`],
    ['ending', suffix ? `the ending ${marked}` : `the beginning ${marked}`],
    ['add marked', `add ${marked} to base words`],
  ].map(([kind = '', text = '']) => ({
    kind: `affix ${kind}`,
    text,
    must: row.id.startsWith('suffix-s') ? [] : all,
    any: all,
    may,
  }));
}

function endingRow(row: Pattern): Wording[] {
  const letters = row.letters.split(' ')[0]!;
  const [key = '', other = key] = row.examples;
  const rime = row.family === 'rime';
  const same = catalogue.filter(
    (one) => one.letters.split(' ').includes(letters) && /^(?:suffix|final syllable)$/.test(one.family),
  );
  const any = rime ? [row.id] : [...same.map(({ id }) => id), ...withPair(row.id)];
  const plain =
    { all: ['a-before-l'], am: ['short-a', 'm'], an: ['short-a', 'n'], ing: ['suffix-ing'] }[letters] ?? [];
  return [
    ['marked', `-${letters}`],
    ['marked (words)', `-${letters} (${key}, ${other})`],
    ['marked as in word', `-${letters} as in ${key}`],
    ...(rime
      ? [
          ['word family', `word family -${letters}`],
          ['marked family', `-${letters} family`],
          ['marked word family', `-${letters} word family (${key})`],
          ['marked words', `-${letters} words`],
          ['rime', `rime -${letters}`],
          ['word families', `word families: -${letters}`],
        ]
      : [
          ['final syllable', `final syllable -${letters}`],
          ['final syllables', `final syllables: -${letters}`],
          ['stable final syllable', `stable final syllable -${letters} (${key})`],
          ['ending', `words ending in -${letters}`],
          ['the ending', `the ending -${letters}`],
        ]),
  ].map(([kind = '', text = '']) => ({
    kind: `ending ${kind}`,
    text,
    must: [],
    any: !/famil|rime/.test(kind) || letters === 'all' ? [...any, ...plain] : any,
    may: rime ? ['ng'] : [],
  }));
}

/** Rows that have no letters, and teachers' names for each. */
const spoken: Readonly<
  Record<string, { readonly names: readonly string[]; readonly may?: readonly string[] }>
> = {
  'type-closed': {
    names: [
      'closed syllables',
      'closed syllable (VC)',
      'closed syllables (napkin)',
      'the closed syllable',
      'closed syllable type',
      'syllable type: closed',
      'closed syllables in longer words',
      'words with closed syllables',
    ],
    may: ['syllables-2', 'syllables-3'],
  },
  'type-open': {
    names: [
      'open syllables',
      'open syllable (CV)',
      'the open syllable',
      'open syllable type',
      'syllable type: open',
      'open syllables in longer words',
      'open syllables (robot, music)',
      'words with open syllables',
    ],
    may: ['long-a', 'long-e', 'long-i', 'long-o', 'long-u-oo', 'long-u-yoo', 'syllables-2', 'syllables-3'],
  },
  'type-vce': {
    names: [
      'VCe syllables',
      'vowel-consonant-e syllable',
      'silent e syllable type',
      'vowel consonant e syllables (cupcake)',
    ],
    may: ['a_e', 'e_e', 'i_e', 'o_e', 'u_e-oo', 'u_e-yoo'],
  },
  'type-team': {
    names: ['vowel team syllables', 'vowel team syllable type', 'vowel team syllables (seaweed)'],
  },
  'type-r': {
    names: ['r-controlled syllables', 'r-controlled syllable type', 'r-controlled syllables (market)'],
  },
  'consonant-le': {
    names: [
      'consonant-le',
      'consonant-le syllables',
      'C-le',
      '-le',
      'consonant + le',
      'consonant -le (table)',
      'final -le',
      'words ending in -le',
      'consonant-le syllable type',
    ],
  },
  compound: {
    names: [
      'compound words',
      'compounds',
      'compound words (sunset, backpack)',
      'reading compound words',
      'compound words such as sunset',
      'Compound Words: sunset, backpack',
    ],
  },
  'change-double': {
    names: [
      'doubling the final consonant',
      'double the final consonant',
      'double the consonant',
      'doubling rule',
      'the doubling rule',
      '1-1-1 doubling rule',
      'double the last consonant (hopping)',
      'double the final consonant before a vowel suffix',
      'double the last letter, then add -ing',
      'doubling the consonant (hop, hopping)',
      'consonant doubling',
      'double the final consonant when adding a suffix',
      'double the consonant before adding an ending',
    ],
    may: ['suffix-ing'],
  },
  'change-drop-e': {
    names: [
      'drop the e',
      'drop e',
      'drop the final e',
      'dropping the silent e',
      'drop the silent e before a vowel suffix',
      'drop e rule',
      'the drop e rule',
      'drop the e (hope, hoping)',
      'e-drop',
      'dropping final e',
      'drop the e and add -ing',
      'drop the final e when adding a suffix',
      'drop-e rule (baking, hoped)',
    ],
    may: ['suffix-ing'],
  },
  'change-y-to-i': {
    names: [
      'change y to i',
      'changing y to i',
      'change the y to i',
      'y to i',
      'y changes to i',
      'changing y to i (cry, cried)',
      'change y to i before adding -es',
      'y → i',
      'change the y to an i and add -es',
      'change y to i rule',
      'y to i: cried, babies',
    ],
    may: ['suffix-es', 'suffix-es-iz', 'suffix-ed-t', 'suffix-ed-d', 'suffix-ed-id', 'suffix-es-z'],
  },
  'change-f-to-v': {
    names: [
      'change f to v',
      'f to v',
      'f to ves plurals',
      'changing f to v and adding -es',
      'f → v (leaf, leaves)',
      'plurals: change f to v',
    ],
    may: ['suffix-es', 'suffix-es-z'],
  },
  'contraction-not': {
    names: [
      'contractions with not',
      "contractions with not (can't)",
      'not contractions',
      "n't contractions",
      "contractions: n't",
      "contractions with n't",
      'contractions using not',
    ],
  },
  'contraction-will': {
    names: [
      'contractions with will',
      "contractions with will (I'll)",
      'will contractions',
      "contractions: 'll",
      "contractions with 'll (we'll)",
    ],
  },
  'contraction-is': {
    names: ['contractions with is', "contractions with is (it's)", 'contractions with is and has'],
    may: [],
  },
  'contraction-have': {
    names: ['contractions with have', "contractions with have (we've)", "contractions with 've"],
  },
  'contraction-are': {
    names: ['contractions with are', "contractions with are (we're)", "contractions with 're"],
  },
  'contraction-would': {
    names: [
      'contractions with would',
      "contractions with would (she'd)",
      'contractions with would and had',
      "contractions with 'd",
    ],
  },
  contraction: { names: ['contractions', 'reading contractions', 'apostrophes in contractions'] },
  'possessive-one': {
    names: ['singular possessives', "singular possessive 's", "possessive 's (singular)"],
    may: ['possessive'],
  },
  'possessive-several': { names: ['plural possessives', "plural possessives s'"], may: [] },
  possessive: {
    names: ['possessives', "possessive 's", 'possessive nouns', 'apostrophe s for possession'],
    may: ['possessive-one'],
  },
  'divide-vc-cv': {
    names: [
      'VC/CV',
      'VCCV',
      'dividing VC/CV words',
      'syllable division VC/CV',
      'VC/CV syllable division (rab-bit)',
      'dividing words with two consonants in the middle (VC/CV)',
      'VCCV pattern: napkin, rabbit',
    ],
    may: ['syllables-2', 'type-closed'],
  },
  'divide-v-cv': {
    names: [
      'V/CV',
      'dividing V/CV words',
      'syllable division V/CV',
      'V/CV (ti-ger)',
      'V/CV words: robot, music',
    ],
    may: ['syllables-2', 'type-open'],
  },
  'divide-vc-v': {
    names: [
      'VC/V',
      'dividing VC/V words',
      'syllable division VC/V',
      'VC/V (cab-in)',
      'VC/V words: cabin, river',
    ],
    may: ['syllables-2', 'type-closed'],
  },
  'divide-v-v': {
    names: ['V/V', 'dividing V/V words', 'syllable division V/V (li-on)', 'V/V words: lion, poet'],
    may: ['syllables-2', 'type-open'],
  },
  'syllables-2': {
    names: [
      'two-syllable words',
      '2-syllable words',
      'reading two-syllable words',
      'words with two syllables',
      'words of two syllables',
    ],
  },
  'syllables-3': {
    names: [
      'three-syllable words',
      '3-syllable words',
      'reading three-syllable words',
      'words with three syllables',
    ],
  },
  'y-long-e': {
    names: [
      'y as long e',
      'y as long e at the end of longer words',
      'y as long e in two-syllable words',
      'y = long e (candy)',
      'final y as long e',
      'y says long e at the end of a two-syllable word',
      'y at the end of two-syllable words (happy)',
      'long e spelled y',
      'y that sounds like long e',
      'y with the sound of long e',
    ],
  },
  'y-long-i': {
    names: [
      'y as long i',
      'y as long i at the end of short words',
      'y as long i in one-syllable words',
      'y = long i (sky)',
      'final y as long i',
      'y says long i (my, fly)',
      'y at the end of one-syllable words (my)',
      'long i spelled y',
    ],
  },
  'i-long-closed': {
    names: [
      'long i in -ind and -ild',
      '-ind, -ild',
      'long vowels in closed syllables: -ild, -ind',
      'closed syllable exceptions: ind, ild',
      'closed syllables with long vowels: -ild, -ind',
      'closed syllables with a long vowel (-ind, -ild)',
      'long i before two consonants (find, child)',
      'i in find and child',
      '-ild and -ind words (child, kind)',
      'exceptions to closed syllables: -ind, -ild',
      'long i in closed syllables (-ild, -ind)',
    ],
    may: ['end-nd', 'end-ld'],
  },
  'o-long-closed': {
    names: [
      'long o in -old and -olt',
      '-old, -ost',
      'long vowels in closed syllables: -old, -ost',
      'closed syllable exceptions: old, ost',
      'long o before two consonants (cold, most)',
      'o in cold and most',
      '-old and -ost words (gold, post)',
    ],
    may: [],
  },
  kn: {
    names: [
      'silent k',
      'silent k (knee)',
      'kn with silent k',
      'silent k in kn',
      'kn (silent k)',
      'kn, silent k',
      'k is silent in kn',
      'kn = /n/',
      'kn says /n/',
    ],
  },
  wr: {
    names: [
      'silent w (write)',
      'wr with silent w',
      'silent w in wr',
      'wr (silent w)',
      'wr = /r/',
      'wr says /r/',
    ],
  },
  gn: { names: ['gn with silent g', 'silent g in gn', 'gn (silent g)', 'gn = /n/', 'silent g (gnat)'] },
  mb: {
    names: [
      'mb with silent b',
      'silent b in mb',
      'mb (silent b)',
      'mb = /m/',
      'silent b (lamb, thumb)',
      '-mb (lamb)',
    ],
  },
  'soft-c': {
    names: [
      'soft c',
      'soft c (city)',
      'c before e, i, y',
      'soft c before e, i, or y',
      'c saying /s/',
      'the soft sound of c',
      'c as /s/ before e, i, y',
      'soft c: ce, ci, cy',
    ],
  },
  'soft-g': {
    names: [
      'soft g',
      'soft g (gem)',
      'g before e, i, y',
      'soft g before e, i, or y',
      'g saying /j/',
      'the soft sound of g',
      'g as /j/ before e, i, y',
      'soft g: ge, gi, gy',
    ],
  },
  'schwa-a': {
    names: [
      'schwa a (about)',
      'schwa spelled a',
      'a as schwa',
      'schwa: a',
      'a as schwa in about',
      'schwa a at the beginning of a word (about, away)',
    ],
  },
};

function spokenRow(row: Pattern): Wording[] {
  const own = spoken[row.id];
  return (own?.names ?? []).map((text) => ({
    kind: `in words: ${text.replace(/\(.*\)/, '(…)').replace(/:.*/, ': …')}`,
    text,
    must: [row.id],
    may: own!.may ?? [],
  }));
}

/** Returns the wordings of a row of the catalogue. */
export function wordingsOf(row: Pattern): readonly Wording[] {
  const own = soundFamilies.test(row.family)
    ? soundRow(row)
    : /blend$/.test(row.family)
      ? blendRow(row)
      : /^(?:suffix|prefix)$/.test(row.family)
        ? affixRow(row)
        : /^(?:rime|final syllable)$/.test(row.family)
          ? endingRow(row)
          : [];
  return [...own, ...spokenRow(row)];
}

/** Returns whether the patterns match the content that several wordings together teach. */
export function isRight(wordings: readonly Wording[], ids: readonly string[]): boolean {
  const fits = ({ must, any = [] }: Wording) =>
    must.every((id) => ids.includes(id)) &&
    (must.length > 0 || any.length === 0 || any.some((id) => ids.includes(id)));
  const allowed = ({ must, any = [], may = [] }: Wording) => [...must, ...any, ...may];
  return (
    ids.length > 0 &&
    wordings.every(fits) &&
    ids.every((id) => wordings.some((one) => allowed(one).includes(id)))
  );
}

/** Returns a wording with its first letter in capitals, except for doubled letters (Gg is one letter) and the pronoun I. */
const begun = ({ text }: Wording) =>
  /^([a-z])\1|^[ai] /.test(text) ? text : `${text[0]!.toUpperCase()}${text.slice(1)}`;

type Planned = readonly (readonly Wording[])[];

/** Ways to lay out steps. Each step teaches several things. */
export const layOuts: Readonly<Record<string, (steps: Planned) => string>> = {
  'bullets below weeks': (steps) =>
    steps.map((own, i) => `Week ${i + 1}\n${own.map((one) => `- ${begun(one)}`).join('\n')}`).join('\n\n'),
  'lines that run on': (steps) =>
    steps.map((own, i) => `Week ${i + 1}: ${own.map(({ text }) => text).join('; ')}`).join('\n'),
  'a table': (steps) =>
    `Week\tPhonics\tSight words\n${steps
      .map((own, i) => `${i + 1}\t${own.map(({ text }) => text).join('; ')}\tthe, of`)
      .join('\n')}`,
  'two columns of a table': (steps) =>
    `Unit\tNew for reading\tSpelling\tSight words\tNotes\n${steps
      .map(
        ([first, ...others], i) =>
          `${i + 1}\t${first!.text}\t${others.map(({ text }) => text).join('; ')}\tthe, of\tpartner work`,
      )
      .join('\n')}`,
  'a table in bars with line ends in its cells': (steps) =>
    `| Week | Focus | Dictation |\n|---|---|---|\n${steps
      .map((own, i) => `| ${i + 1} | ${own.map(({ text }) => text).join('<br>')} | map, sit |`)
      .join('\n')}`,
  'numbered names with more below them': (steps) =>
    steps
      .map(([first, ...others], i) => {
        const lines = [...others.map(({ text }) => text), 'sight words: the, of'].map(
          (text) => `   - ${text}`,
        );
        return `${i + 1}. ${begun(first!)}\n${lines.join('\n')}`;
      })
      .join('\n\n'),
};

/** Wordings that are read in another way or asked about, each with the reason why this is accepted. */
export const exceptions: readonly (readonly [RegExp, string])[] = [
  [
    /-(?:th|an|et)\b/,
    'The ending is letters, a word family or a suffix: nothing says which, so it is a guess.',
  ],
  [/\b(?:the|with) (?:are|our)\b/, 'The word of every day is likelier than the letters.'],
  [/^(?:i like|a words|or spelling)/, 'A sentence of every day begins so.'],
  [/-or\b|suffix "?or\b/, 'The word between two others is likelier than the ending; it is asked.'],
  [/^-(?:ary|ancy):/, 'The examples have another spelling of the ending; they are asked.'],
  [/^cc:/, 'Who gets a copy of an e-mail stands behind it.'],
];

/**
 * Remarks that teachers add after or within a list of by-sight words. The words of a remark do not belong to the list.
 * Common practice, no source.
 */
export const sightRemarks: readonly string[] = [
  ' (ship, wish)',
  ' - ship, wish, chin',
  '. Ship and wish on cards',
  '. Words: ship, wish',
  '; words to read: ship, wish',
  '. Review he, we',
  '; review: he, we',
  ', practice ship, wish',
  ' (from last week: he, we)',
  ' (review he, we)',
  ' – spell said',
  ' plus review of old words',
  ' and review words',
  ', quick check on Friday',
  ' (flashcards)',
  ' x 3',
  ' etc.',
  '...',
  ' (5 words)',
  ' 1-10',
  '. No new phonics',
  ' * test Friday',
  ' (continued)',
  ' with heart cards',
  '; dictation: the ship, a wish',
  ' Decodable: ship wish',
  '. The Ship (reader 4)',
];

/** Names of a list of by-sight words, each with the separator before its words. */
export const sightNames = ['Sight words: ', 'High-frequency words: ', 'Sight words ', 'Tricky words - '];

/**
 * The verbs and objects of remarks about things that teachers prepare. Nothing in these remarks is taught. Common
 * practice, no source.
 */
export const preparations = {
  verbs:
    'set up|get out|lay out|put up|hand out|pass out|send home|cut out|print|copy|laminate|prepare|gather|order|label|hang|post|display|bring|assign|update|make|pull|plan|introduce|model|use|begin|share'.split(
      '|',
    ),
  things:
    'word boxes|sound boxes|letter tiles|magnetic letters|the word wall|the sound wall|flash cards|word cards for sorting|student folders|decodable books|dictation notebooks|whiteboards|picture cards|the vowel chart|blend cards|the digraph poster|short vowel posters|the vowel team anchor chart|silent e sorts|sight word rings|contraction matching cards|partner reading routines|reading logs|data folders|alphabet strips|small groups'.split(
      '|',
    ),
};

/** The places of a plan in which a remark may be written. */
export const remarkPlaces: Readonly<Record<string, (remark: string) => string>> = {
  'a line below a week': (remark) => `Week 1: sh, ch\n${remark}\nWeek 2: ck`,
  'a bullet': (remark) => `Week 1\n- sh, ch\n- ${remark}\nWeek 2\n- ck`,
  'behind a semicolon': (remark) => `Week 1: sh, ch; ${remark}\nWeek 2: ck`,
  'a sentence': (remark) => `Week 1: sh, ch. ${remark}.\nWeek 2: ck`,
  'a cell': (remark) => `Week\tFocus\tSight words\n1\tsh, ch; ${remark}\tthe\n2\tck\tof`,
};

/**
 * The ways in which teachers say to which words -es is added. The letters in these texts are not taught. Common
 * practice, no source.
 */
export const endingConditions: readonly string[] = [
  'words ending in',
  'words that end in',
  'words that end with',
  'nouns ending in',
  'nouns that end with the letters',
  'base words ending with',
].flatMap((words) => [
  `adding -es to ${words} s, x, z, ch, sh`,
  `-es to ${words} s, x, z, ch and sh`,
  `-es for ${words} s, x, or z`,
  `suffix -es after ${words} ch, sh, x`,
  `add -es to ${words} ss, x, z, ch, or sh (dishes)`,
]);
