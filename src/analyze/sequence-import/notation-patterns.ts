import { catalogue } from '../catalogue/catalogue.ts';
import { longOf, matchWords, type NotationRule, phrase, stands } from './match-words.ts';
import { changeOfBase, doubleThen, kindOfLetters, placeBehind, possessiveKinds } from './notation-changes.ts';
import {
  blendsWith,
  familyWith,
  listedTypes,
  sharedNoun,
  shareSyllable,
  typesTogether,
} from './notation-families.ts';
import {
  bothLengths,
  bracketedLetter,
  letterRange,
  lettersInEnding,
  repeatWord,
  softSounds,
  soundByLetters,
  voicedTh,
} from './notation-lists.ts';
import {
  contractionKinds,
  doubleBeside,
  rimeList,
  rootsByName,
  softBehind,
  unitEndings,
} from './notation-word-parts.ts';
import { at, ofWords, words } from './place-words.ts';
import { findSpelling } from './spellings.ts';
import type { Lexeme } from './split-lexemes.ts';

const silentE = stands(
  'silent e',
  '(?:(?:long )?vowels? (?:(?:with|and|plus|consonant)(?: an| a| the)? )?(?:silent |final )?e(?: at the end)?|(?:silent |final )?e at the end(?: of (?:a |the )?words?)?)',
  true,
);

const openEnd = stands(
  'open syllable',
  '(?:syllables? (?:that |which )?(?:end|ends|ending) (?:in|with) (?:a |an |the |their |one )?(?:long |single )?vowels?|(?:a |the |one )?(?:single )?vowels? at the end of (?:the |a |one |an )?(?:short |open |one syllable )?(?:words?|syllables?)(?: (?:is|are|being|says?) (?:long|(?:its|their) (?:name|names|long sound|long sounds)))?|vowels? at the end of (?:the |a )?syllables?)',
);

const vowelAndE = matchWords(
  '([aeiou]) (?:with|and|plus) (?:a |the )?(?:silent|final|magic) e',
  [],
  ([, vowel = ''], whole) => ({
    ...whole,
    text: `${vowel}_e`,
  }),
);

function listsSuffixes(lexemes: readonly Lexeme[]): boolean {
  const words = lexemes.filter(({ kind, text }) => kind === 'word' && text !== 'and' && text !== 'or');
  const isSuffix = (text: string) =>
    findSpelling(text, 'suffix', true)?.candidates.some((id) => id.startsWith('suffix-')) === true;
  return words.length > 1 && words.every(({ text }) => isSuffix(text));
}

const weakStart = phrase(
  'schwa (?:a )?(?:in|at) (?:the |an? )?(?:(?:first|initial|unstressed first) syllable|(?:start|beginning))(?: of (?:a |the )?words?)?',
  () => ['schwa-a'],
);

const doubling = phrase(
  '(?:and |with |by )?(?:an? |the )?(?:doubled|doubling(?: of)?)(?: an?| the)? (?:final |last )?(?:consonants?|letters?)',
  () => ['change-double'],
);

/** Returns the blends of two or three letters at one place of a word. */
function clustersOf(letters: 2 | 3, place: 'start' | 'end') {
  return catalogue
    .map(({ id }) => id)
    .filter((id) => id.startsWith(`${place}-`) && id.length === place.length + 1 + letters);
}

/** Rules for words that mean patterns or letters. The first rule that applies is used. */
export const patternNotations: readonly NotationRule[] = [
  {
    name: 'y at the end of longer words',
    example: 'y at the end of two-syllable words',
    counterExample: 'y at the end',
    applies: phrase(
      `y (?:${at}|ending|ends) (?:of|in|for) (?:a |the )?(?:two|2|longer|long|multi|multisyllabic|multisyllable|three|more)(?: or more)?(?: syllable)?(?: ${words})?(?: (?:says?|saying|as|is|sounds like|makes?) (?:the )?long e(?: sound)?)?`,
      () => ['y-long-e'],
    ),
  },
  {
    name: 'y at the end of short words',
    example: 'y at the end of one-syllable words',
    counterExample: 'y at the end of two-syllable words',
    applies: phrase(
      `y (?:${at}|ending|ends) (?:of|in|for) (?:a |the )?(?:one|1|short|single)(?: syllable)?(?: ${words})?(?: (?:says?|saying|as|is|sounds like|makes?) (?:the )?long i(?: sound)?)?`,
      () => ['y-long-i'],
    ),
  },
  {
    name: 'y within a word',
    example: 'y in the middle of a word',
    counterExample: 'y in the word my',
    applies: phrase(`(?:medial y|y in (?:the )?middle${ofWords})`, () => ['y-short-i']),
  },
  {
    name: 'a at the end of a word',
    example: 'a at the end of a word (sofa)',
    counterExample: 'ay at the end of a word',
    applies: phrase(`(?:final a|a ${at}${ofWords})(?: (?:says|as|is|for)(?: a| the)? (?:schwa|uh))?`, () => [
      'schwa-a',
    ]),
  },
  {
    name: 'the weak first syllable',
    example: 'schwa in the first syllable (about)',
    counterExample: 'schwa in the last syllable',
    applies: (lexemes, i) => {
      const found = weakStart(lexemes, i);
      // "schwa at the start: a-" is followed by a list of its letters.
      return found !== null && lexemes[i + found.taken]?.kind === 'is' ? null : found;
    },
  },
  {
    name: 'a word said once for several letters',
    example: 'long e, i, o',
    counterExample: 'long e, ee, ea',
    applies: repeatWord,
  },
  {
    name: 'an open vowel',
    example: 'open e',
    counterExample: 'open syllables',
    applies: phrase('open (?:vowel )?([aeiouy])', ([, vowel = '']) => longOf[vowel]!),
  },
  {
    name: 'a vowel of open syllables',
    example: 'i in an open syllable',
    counterExample: 'a_e in an open syllable',
    applies: phrase(
      '([aeiouy]) (?:in|of|at the end of) (?:an |the |a )?open syllables?',
      ([, vowel = '']) => longOf[vowel]!,
    ),
  },
  {
    name: 'a place where words are divided',
    example: 'dividing between two consonants',
    counterExample: 'between two consonants',
    applies: phrase(
      '(?:divid(?:e|es|ing)|split(?:s|ting)?|cut(?:s|ting)?|division)(?: (?:the|a|longer|words?|syllables?|of|in|into|right|two|2))*? (between (?:the |two |2 |double |middle )*(?:consonants?|vowels?)|(?:before (?:the |a |one |single )*consonant(?! le| plus| l)|after (?:the |a |first |long |open )*(?:vowel|vowel sound))|after (?:the |a |one |first )*consonant)',
      ([, place = '']) => [
        place.startsWith('between')
          ? place.includes('vowel')
            ? 'divide-v-v'
            : 'divide-vc-cv'
          : /^after.*consonant/.test(place)
            ? 'divide-vc-v'
            : 'divide-v-cv',
      ],
    ),
  },
  {
    name: 'whose possessives',
    example: 'possessives, one owner',
    counterExample: 'possessives',
    applies: possessiveKinds,
  },
  {
    name: 'doubling before an ending is added',
    example: 'double, then add',
    counterExample: 'double letters',
    applies: doubleThen,
  },
  {
    name: 'letters of the base that change',
    example: 'y→i',
    counterExample: 'y as long i',
    applies: changeOfBase,
  },
  {
    name: 'the place of blends behind them',
    example: 'blends, final',
    counterExample: 'blends, digraphs',
    applies: placeBehind,
  },
  {
    name: 'doubling a letter',
    example: 'doubling the last consonant',
    counterExample: 'words ending in a double consonant',
    applies: phrase(
      '(?:doubl(?:e|es|ing) (?:the|a|of the)(?: last| final)?|doubling(?: last| final| of)?|double (?:the )?last) (?:consonant|letter)(?: rule)?(?: (?:at|to) the end)?(?: (?:when|before) adding.*)?|(?:double|doubling) it',
      () => ['change-double'],
    ),
  },
  {
    name: 'two words in one',
    example: 'two small words in one big word',
    counterExample: 'two words',
    applies: phrase(
      '(?:two|2) (?:small |smaller |little |short |whole )?words (?:joined|put together|in|into|made into|that make|making)(?: to make)?(?: a| one)?(?: new| big| bigger| long| longer)?(?: word)?',
      () => ['compound'],
    ),
  },
  {
    name: 'a word of small words',
    example: 'big words made from little words',
    counterExample: 'big words',
    applies: phrase(
      '(?:big|bigger|long|longer|new) words? (?:that are )?(?:made|built|formed|put together)(?: up)? (?:from|of|out of|with) (?:two |2 )?(?:(?:little|small|smaller|short|other) )?words',
      () => ['compound'],
    ),
  },
  {
    name: 'a consonant that is doubled',
    example: 'last consonant doubled',
    counterExample: 'doubled consonants',
    applies: phrase(
      '(?:the )?(?:last |final )?(?:consonant|letter) (?:is |gets )?(?:doubled|doubles)(?: before .*)?',
      () => ['change-double'],
    ),
  },
  {
    name: 'endings with a consonant that is doubled',
    example: '-ing and -ed with doubled consonant',
    counterExample: 'words with doubled consonants',
    applies: (lexemes, i) => (lexemes[i - 1]?.mark === 'suffix' ? doubling(lexemes, i) : null),
  },
  {
    name: 'an e that is dropped',
    example: 'final e dropped',
    counterExample: 'final e',
    applies: phrase(
      '(?:the )?(?:last |final |silent )?e (?:is |gets )?(?:dropped|drops|goes|left off|taken off)(?: before .*)?',
      () => ['change-drop-e'],
    ),
  },
  {
    name: 'consonants side by side',
    example: 'two consonants at the end',
    counterExample: 'consonants at the end',
    applies: matchWords(
      `(?<count>two|2|three|3) consonants? (?:together |side by side )?${at}${ofWords}`,
      ['open', 'is'],
      ({ groups, 0: said }, whole) => ({
        ...whole,
        kind: 'meant',
        ids: clustersOf(/2|two/.test(groups!.count!) ? 2 : 3, /end/.test(said) ? 'end' : 'start'),
        // Plans differ on whether shr and thr are among these consonants.
        open: true,
      }),
    ),
  },
  {
    name: 'dropping an e',
    example: 'dropping the last e',
    counterExample: 'the last e',
    applies: phrase(
      '(?:e dropping|dropped e|(?:drop|drops|dropping|losing|lose|removing|remove)(?: of)?(?: the| a)?(?: last| final| silent)? e)(?: rule)?',
      () => ['change-drop-e'],
    ),
  },
  {
    name: 'y that changes',
    example: 'y changing',
    counterExample: 'y as long i',
    applies: phrase('y changing(?: rule)?', () => ['change-y-to-i']),
  },
  {
    name: 'a vowel followed by r',
    example: 'a followed by r',
    counterExample: 'vowels followed by r',
    applies: matchWords(
      '([aeiou]) (?:(?:is |when )?followed by|plus|with|and then|before) (?:an |the )?(?:letter )?r',
      [],
      ([, vowel = ''], whole) => ({ ...whole, text: `${vowel}r` }),
    ),
  },
  {
    name: 'i before e',
    example: 'i before e except after c',
    counterExample: 'c before e',
    applies: phrase('i before e(?: except after c)?', () => ['ie-long-e', 'ei-long-e']),
  },
  {
    name: 'endings of one vowel and consonants',
    example: '-op, -ot',
    counterExample: '-er, -est',
    applies: rimeList,
  },
  {
    name: 'endings taught as units that are words alone',
    example: 'am, an, all',
    counterExample: 'am, an',
    applies: unitEndings,
  },
  {
    name: 'roots by name',
    example: 'Root port',
    counterExample: 'root words',
    applies: rootsByName,
  },
  {
    name: 'contractions by their second word',
    example: 'contractions with not, is',
    counterExample: 'contractions',
    applies: contractionKinds,
  },
  {
    name: 'soft or hard after its letters',
    example: 'c and g, soft',
    counterExample: 'c and g',
    applies: softBehind,
  },
  {
    name: 'double beside other changes of the base',
    example: 'double, drop e',
    counterExample: 'double f, l',
    applies: doubleBeside,
  },
  {
    name: 'letters from one to another',
    example: 'f-j',
    counterExample: 'a-e',
    applies: letterRange,
  },
  {
    name: 'long vowels that end words',
    example: 'words that end in a long vowel',
    counterExample: 'words that end in a consonant',
    applies: stands(
      'long vowel',
      '(?:one syllable |1 syllable |short |little )?words? (?:that |which )?(?:end|ends|ending) (?:in|with) (?:a |an |the |their |one )?long vowels?',
    ),
  },
  {
    name: 'open syllables in other words',
    example: 'syllables that end in a vowel',
    counterExample: 'syllables that end in a consonant',
    applies: (lexemes, i) => (lexemes[i - 1]?.text === 'long' ? null : openEnd(lexemes, i)),
  },
  {
    name: 'one vowel with a silent e',
    example: 'a with silent e',
    counterExample: 'long a with silent e',
    applies: (lexemes, i) =>
      /^(?:long|short)$/.test(lexemes[i - 1]?.text ?? '') ? null : vowelAndE(lexemes, i),
  },
  {
    name: 'rules of numbers',
    example: '1:1:1 rule',
    counterExample: '1 rule',
    applies: phrase('1 1 1(?: doubling| doubling rule| rule)?', () => ['change-double']),
  },
  {
    name: 'endings that are listed without hyphens',
    example: 'endings: s, ed, ing',
    counterExample: 'endings: nd, nt',
    applies: (lexemes, i) =>
      lexemes[i]!.text === 'endings' && lexemes[i + 1]?.kind === 'is' && listsSuffixes(lexemes.slice(i + 2))
        ? { taken: 1, given: [{ ...lexemes[i]!, text: 'suffixes' }] }
        : null,
  },
  {
    name: 'a vowel with an e at the end',
    example: 'long vowel with e at the end',
    counterExample: 'long vowels',
    // "short vowel e" has no silent e.
    applies: (lexemes, i) =>
      /^(?:long|short)$/.test(lexemes[i - 1]?.text ?? '') ? null : silentE(lexemes, i),
  },
  {
    name: 'a vowel with r',
    example: 'vowels with r',
    counterExample: 'words with r',
    applies: stands(
      'r controlled',
      '(?:vowels? (?:(?:with|and|plus|before|followed by)(?: an| the)? )?r|r (?:with|after)(?: a| the)? vowels?|vowels? (?:and|with|plus) the letter r)',
      true,
    ),
  },
  {
    name: 'soft and hard sounds of letters',
    example: 'soft sounds of c and g',
    counterExample: 'soft c',
    applies: softSounds,
  },
  {
    name: 'long and short of one vowel',
    example: 'long and short oo',
    counterExample: 'long and short vowels',
    applies: bothLengths,
  },
  {
    name: 'blends of one letter',
    example: 'beginning blends with r',
    counterExample: 'beginning blends br, cr',
    applies: blendsWith,
  },
  {
    name: 'a family with some letters',
    example: 'final blends with n and m',
    counterExample: 'words with n and m',
    applies: familyWith,
  },
  {
    name: 'silent e of a syllable',
    example: 'silent e in the last syllable',
    counterExample: 'silent e in words',
    applies: phrase(
      '(?:silent e|magic e|final e|vce|v e|vowel consonant e|split digraphs?)(?: words?)? (?:in|at the end of|as) (?:the |a |an )?(?:last|final|second|longer|accented|stressed|multisyllabic|syllable)(?: or last)?(?: syllables?| type| words?)*',
      () => ['type-vce'],
    ),
  },
  {
    name: 'a noun said once for two',
    example: 'initial and final blends',
    counterExample: 'ai and final blends',
    applies: sharedNoun,
  },
  {
    name: 'syllable types put together',
    example: 'closed + open',
    counterExample: 'closed, open',
    applies: typesTogether,
  },
  {
    name: 'th with its voice',
    example: 'th, voiced',
    counterExample: 'th (soft)',
    applies: voicedTh,
  },
  {
    name: 'q with u',
    example: 'q u',
    counterExample: 'q, u',
    applies: matchWords('q u', [], (_, whole) => ({ ...whole, text: 'qu' })),
  },
  {
    name: 'syllable types in a list',
    example: 'syllable types: closed, VCe',
    counterExample: 'syllables: closed, VCe',
    applies: listedTypes,
  },
  {
    name: 'syllable types that share a word',
    example: 'closed, open and VCe syllables',
    counterExample: 'closed syllables',
    applies: shareSyllable,
  },
  {
    name: 'letters in a longer ending',
    example: 'i in -ind, -ild',
    counterExample: 'i in pin',
    applies: lettersInEnding,
  },
  {
    name: 'letters by the kind of a word',
    example: 'the cow kind of ow',
    counterExample: 'the cow kind of oa',
    applies: kindOfLetters,
  },
  {
    name: 'a sound by its letters',
    example: 'the k sound',
    counterExample: 'the short oo sound',
    applies: soundByLetters,
  },
  {
    name: 'a letter not heard, or only written beside',
    example: 'k(n), (m)b',
    counterExample: 'ai (rain)',
    applies: bracketedLetter,
  },
];
