import {
  becomes,
  longOf,
  type Notation,
  type NotationReader,
  note,
  phrase,
  stands,
  wordAt,
} from './match-words.ts';
import {
  blendsWith,
  bothLengths,
  bracketedLetter,
  everySound,
  letterRange,
  lettersInEnding,
  repeatWord,
  shareSyllable,
  shortForms,
  softSounds,
  soundOf,
} from './notation-lists.ts';
import type { Lexeme } from './split-lexemes.ts';

/** Words of a clause that are read together before the rest, and what stands in their place. */
export interface NotationRule {
  readonly name: string;
  /** A clause it applies to, and one much like it that it must leave alone. */
  readonly example: string;
  readonly counterExample: string;
  /** What `taken` lexemes from `i` on become; null where the rule does not apply. */
  readonly applies: NotationReader;
}

const words = '(?:words?|syllables?|bases?|roots?|names?)';
const kindsOfWord =
  '(?:a|an|the|one|two|three|2|3|1|single|short|long|longer|simple|base|syllable|multi|multisyllabic|multisyllable|many|some|most|other|all|closed|stressed|unstressed|or|more|and)';
const ofWords = `(?: (?:of|in)(?: ${kindsOfWord})*(?: ${words})+)?`;
const place =
  '(?:end|ends|ending|start|beginning|middle|front|final position|initial position|medial position)';
const at = `(?:at|in|on|from) (?:the |a )?(?:very )?${place}`;

/** In order; the first that applies is taken. */
export const notationRules: readonly NotationRule[] = [
  {
    name: 'y at the end of longer words',
    example: 'y at the end of two-syllable words',
    counterExample: 'y at the end',
    applies: phrase(
      `y (?:${at}|ending|ends) (?:of|in|for) (?:a |the )?(?:two|2|longer|long|multi|multisyllabic|multisyllable|three|more)(?: or more)?(?: syllable)?(?: ${words})?`,
      () => ['y-long-e'],
    ),
  },
  {
    name: 'y at the end of short words',
    example: 'y at the end of one-syllable words',
    counterExample: 'y at the end of two-syllable words',
    applies: phrase(
      `y (?:${at}|ending|ends) (?:of|in|for) (?:a |the )?(?:one|1|short|single)(?: syllable)?(?: ${words})?`,
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
    name: 'doubling a letter',
    example: 'doubling the last consonant',
    counterExample: 'double letters',
    applies: phrase(
      'doubl(?:e|es|ing)(?: of)?(?: the| a)?(?: last| final)? (?:consonant|letter)(?: rule)?(?: (?:at|to) the end)?(?: (?:when|before) adding.*)?',
      () => ['change-double'],
    ),
  },
  {
    name: 'dropping an e',
    example: 'dropping the last e',
    counterExample: 'the last e',
    applies: phrase(
      '(?:drop|drops|dropping|losing|lose|removing|remove)(?: of)?(?: the| a)?(?: last| final| silent)? e(?: rule)?',
      () => ['change-drop-e'],
    ),
  },
  {
    name: 'changing y to i',
    example: 'y becomes i',
    counterExample: 'y as long i',
    applies: phrase(
      '(?:(?:chang(?:e|es|ing)|turn(?:s|ing)?|swap(?:ping)?)(?: the| a)?(?: final| last)? y (?:to|into|for)(?: an?)? i|y (?:becomes?|changes to|turns into|changing to|to)(?: an?)? i)(?: rule)?',
      () => ['change-y-to-i'],
    ),
  },
  {
    name: 'letters from one to another',
    example: 'f-j',
    counterExample: 'a-e',
    applies: letterRange,
  },
  {
    name: 'a vowel with an e at the end',
    example: 'long vowel with e at the end',
    counterExample: 'long vowels',
    applies: stands(
      'silent e',
      '(?:(?:long )?vowels? (?:(?:with|and|plus|consonant)(?: an| a| the)? )?(?:silent |final )?e(?: at the end)?|(?:silent |final )?e at the end(?: of (?:a |the )?words?)?)',
      true,
    ),
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
    name: 'a letter not heard, or only written beside',
    example: 'k(n), (m)b',
    counterExample: 'ai (rain)',
    applies: bracketedLetter,
  },
  {
    name: 'short forms by their words',
    example: 'contractions with not, is, will',
    counterExample: 'blends with s, l',
    applies: shortForms,
  },
  {
    name: 'singular and plural',
    example: 'possessives: singular and plural',
    counterExample: 'plurals',
    applies: note(
      '(?:of )?(?:singular (?:and |or |& )?plural|plural (?:and |or |& )?singular|singular)(?: nouns?| ones?| forms?)?|nouns?',
    ),
  },
  {
    name: 'a sound by its name',
    example: 'gh with the sound of f',
    counterExample: 'the sound of f',
    applies: soundOf,
  },
  {
    name: 'all sounds of letters',
    example: 'ear (three sounds)',
    counterExample: 'three blends',
    applies: everySound,
  },
  {
    name: 'examples follow',
    example: 'igh such as light',
    counterExample: 'as',
    applies: becomes(
      'hint',
      '(?:such as|as in|as heard in|like in|for example|for instance|found in|heard in|words like|in words like|in words such as|in words|as found in)(?: the words?)?',
    ),
  },
  {
    name: 'a list follows',
    example: 'digraphs including sh and th',
    counterExample: 'digraphs in books',
    applies: becomes(
      'list',
      '(?:including|includes?|namely|(?:spelled|spelt|spellings?)(?: as| with| by| of)?|written(?: as| with)?|made (?:with|by)|represented (?:by|as))',
    ),
  },
  {
    name: 'one more',
    example: 'er, ir plus ur',
    counterExample: 'plus',
    applies: (lexemes, i) =>
      i > 0 && /^(?:plus|also|then)$/.test(wordAt(lexemes, i)) && lexemes[i + 1] !== undefined
        ? { taken: 1, given: [{ ...lexemes[i]!, kind: 'break', text: 'plus' }] }
        : null,
  },
  {
    name: 'a place in the word',
    example: 'ck at the end of short words',
    counterExample: 'end blends',
    applies: note(`${at}${ofWords}`),
  },
  {
    name: 'beside a kind of sound',
    example: 'tch after a short vowel',
    counterExample: 'c before e, i',
    applies: note(
      `(?:before|after|following|when adding|when you add) (?:a |an |the |any |one |all )?(?:(?:short|long|single|final|stressed|vowel|consonant|other|and|or|another|suffix|ending)\\s?)*(?:vowels?|consonants?|suffix|suffixes|endings?|vowel sounds?|syllables?|letters?)(?: sounds?| suffix(?:es)?)?`,
    ),
  },
  {
    name: 'what is left as it is',
    example: '-ing with no change',
    counterExample: 'change y to i',
    applies: note(
      '(?:with |and )?(?:no|without) (?:a )?(?:base |spelling )?change|for comparing|for more than one|(?:to )?say the same|all say',
    ),
  },
];

/** Reads runs of words that mean one thing; `used` hears the name of each rule that applied. */
export function applyNotations(
  lexemes: readonly Lexeme[],
  used: (rule: string) => void = () => {},
): readonly Lexeme[] {
  const read: Lexeme[] = [];
  for (let i = 0; i < lexemes.length; ) {
    const found = firstOf(lexemes, i);
    if (found === null) {
      read.push(lexemes[i]!);
      i += 1;
      continue;
    }
    used(found.name);
    read.push(...found.given);
    i += found.taken;
  }
  return read;
}

function firstOf(lexemes: readonly Lexeme[], i: number): (Notation & { name: string }) | null {
  const { kind } = lexemes[i]!;
  if (kind !== 'word' && kind !== 'open') return null;
  for (const { name, applies } of notationRules) {
    const found = applies(lexemes, i);
    if (found !== null) return { ...found, name };
  }
  return null;
}
