import type { PatternId } from '../types.ts';
import { findSpelling } from './spellings.ts';
import type { Lexeme } from './split-lexemes.ts';

/** Words of a clause that are read together before the rest, and what stands in their place. */
export interface NotationRule {
  readonly name: string;
  /** A clause it applies to, and one much like it that it must leave alone. */
  readonly example: string;
  readonly counterExample: string;
  /** What `taken` lexemes from `i` on become; null where the rule does not apply. */
  readonly applies: (lexemes: readonly Lexeme[], i: number) => Notation | null;
}

interface Notation {
  readonly taken: number;
  readonly given: readonly Lexeme[];
}

const longOf: Readonly<Record<string, readonly PatternId[]>> = {
  a: ['long-a'],
  e: ['long-e'],
  i: ['long-i'],
  o: ['long-o'],
  u: ['long-u-yoo', 'long-u-oo'],
  y: ['y-long-i'],
};

const words = '(?:words?|syllables?|bases?|roots?|names?)';
const kindsOfWord =
  '(?:a|an|the|one|two|three|2|3|1|single|short|long|longer|simple|base|syllable|multi|multisyllabic|multisyllable|many|some|most|other|all|closed|stressed|unstressed|or|more|and)';
const ofWords = `(?: (?:of|in)(?: ${kindsOfWord})*(?: ${words})+)?`;
const place =
  '(?:end|ends|ending|start|beginning|middle|front|final position|initial position|medial position)';
const at = `(?:at|in|on|from) (?:the |a )?(?:very )?${place}`;
const numbers: Readonly<Record<string, string>> = { two: '2', three: '3', four: '4', five: '5', six: '6' };

/** Words that a contraction has instead of its apostrophe. */
const shortened = /^(?:not|is|will|am|are|have|has|had|would|us|be|verbs?|pronouns?|to)$/;

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
    name: 'long or short for each vowel of a list',
    example: 'long e, i, o',
    counterExample: 'long e, ee, ea',
    applies: repeatLength,
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

/** The longest run a rule looks at, in lexemes. */
const LONGEST = 12;

function wordAt(lexemes: readonly Lexeme[], i: number): string {
  return lexemes[i]?.kind === 'word' ? lexemes[i].text : '';
}

/**
 * A rule for words that stand one after the other, with nothing between them but what `over` names; an affix is not
 * taken for a word.
 */
function matchWords(
  source: string,
  over: readonly Lexeme['kind'][],
  give: (found: RegExpExecArray, whole: Lexeme) => Lexeme,
): NotationRule['applies'] {
  const pattern = new RegExp(`^(?:${source})(?= |$)`);
  return (lexemes, i) => {
    const run: { lexeme: Lexeme; next: number }[] = [];
    for (let next = i; next < lexemes.length && run.length < LONGEST; next++) {
      const lexeme = lexemes[next]!;
      if (run.length > 0 && over.includes(lexeme.kind)) continue;
      if (lexeme.kind !== 'word' || lexeme.mark !== 'none') break;
      run.push({ lexeme, next: next + 1 });
    }
    const found = pattern.exec(run.map(({ lexeme }) => lexeme.text).join(' '));
    if (found === null || found[0] === '') return null;
    const text = found[0].trim();
    const last = run[text.split(' ').length - 1]!;
    return { taken: last.next - i, given: [give(found, { ...run[0]!.lexeme, text, end: last.lexeme.end })] };
  };
}

function phrase(
  source: string,
  ids: (found: RegExpExecArray) => readonly PatternId[],
): NotationRule['applies'] {
  return matchWords(source, ['open', 'is'], (found, whole) => ({ ...whole, kind: 'meant', ids: ids(found) }));
}

/** Other words for a phrase of the trade; `over`: a plus sign may stand in them. */
function stands(name: string, source: string, over = false): NotationRule['applies'] {
  const read = matchWords(source, over ? ['break'] : [], (_, whole) => whole);
  return (lexemes, i) => {
    const found = read(lexemes, i);
    if (found === null) return null;
    // A plus sign may divide the words, a comma may not.
    const between = lexemes.slice(i, i + found.taken).filter(({ kind }) => kind === 'break');
    if (between.some(({ text }) => text !== '+' && text !== '&')) return null;
    const whole = found.given[0]!;
    return { taken: found.taken, given: name.split(' ').map((text) => inPlace(whole, text)) };
  };
}

function letterRange(lexemes: readonly Lexeme[], i: number): Notation | null {
  const [, from = '', to = ''] = /^([a-z])-([a-z])$/.exec(wordAt(lexemes, i)) ?? [];
  if (from === '' || (from === 'a' && to === 'z')) return null;
  const letters = [...'abcdefghijklmnopqrstuvwxyz'].filter((letter) => letter >= from && letter <= to);
  const ids = letters.map((letter) =>
    'aeiou'.includes(letter) ? `short-${letter}` : letter === 'q' ? 'qu' : letter,
  );
  return { taken: 1, given: [{ ...lexemes[i]!, kind: 'meant', ids }] };
}

function softSounds(lexemes: readonly Lexeme[], i: number): Notation | null {
  const size = wordAt(lexemes, i);
  if (!/^(?:soft|hard)$/.test(size) || !/^sounds?$/.test(wordAt(lexemes, i + 1))) return null;
  if (!/^(?:of|for|from)$/.test(wordAt(lexemes, i + 2)) || !/^[cg]$/.test(wordAt(lexemes, i + 3)))
    return null;
  return { taken: 3, given: [lexemes[i]!] };
}

function note(source: string): NotationRule['applies'] {
  return becomes('note', source);
}

function becomes(kind: Lexeme['kind'], source: string): NotationRule['applies'] {
  return matchWords(source, [], (_, whole) => ({ ...whole, kind }));
}

function repeatLength(lexemes: readonly Lexeme[], i: number): Notation | null {
  const length = lexemes[i]!;
  const isVowel = (at: number) =>
    /^[aeiou]$/.test(wordAt(lexemes, at)) && lexemes[at]!.mark === 'none' && lexemes[at + 1]?.kind !== 'is';
  if (!/^(?:long|short)$/.test(length.text) || !isVowel(i + 1)) return null;
  const given: Lexeme[] = [length, lexemes[i + 1]!];
  let end = i + 2;
  for (let next = end; next < lexemes.length; next++) {
    if (isVowel(next)) {
      given.push(...lexemes.slice(end, next), { ...length, start: lexemes[next]!.start }, lexemes[next]!);
      end = next + 1;
    } else if (lexemes[next]!.kind !== 'break' && !/^(?:and|or)$/.test(wordAt(lexemes, next))) break;
  }
  return end > i + 2 ? { taken: end - i, given } : null;
}

/** A word in the place of another lexeme. */
function inPlace(lexeme: Lexeme, text: string): Lexeme {
  return { ...lexeme, kind: 'word', text, mark: 'none' };
}

function bothLengths(lexemes: readonly Lexeme[], i: number): Notation | null {
  const isLength = (at: number) => /^(?:long|short)$/.test(wordAt(lexemes, at));
  const joined = /^(?:and|or|[&/+,])$/.test(lexemes[i + 1]?.text ?? '');
  const letters = wordAt(lexemes, i + 3);
  if (!isLength(i) || !joined || !isLength(i + 2) || !/^(?:[aeiou]|oo)$/.test(letters)) return null;
  const vowel = lexemes[i + 3]!;
  const [one, and, other] = lexemes.slice(i, i + 3);
  return { taken: 4, given: [one!, inPlace(one!, letters), and!, other!, vowel] };
}

function blendsWith(lexemes: readonly Lexeme[], i: number): Notation | null {
  let at = i;
  while (/^(?:initial|beginning|start|starting|consonant|two|letter)$/.test(wordAt(lexemes, at))) at += 1;
  if (!/^(?:blends?|clusters?)$/.test(wordAt(lexemes, at))) return null;
  at += 1;
  while (/^(?:beginning|starting|made|that|begin|start)$/.test(wordAt(lexemes, at))) at += 1;
  if (!/^(?:with|of)$/.test(wordAt(lexemes, at))) return null;
  const given: Lexeme[] = [];
  let end = at + 1;
  for (let next = at + 1; next < lexemes.length; next++) {
    if (/^[lrs]$/.test(wordAt(lexemes, next))) {
      given.push(...lexemes.slice(end, next), lexemes[next]!, inPlace(lexemes[next]!, 'blend'));
      end = next + 1;
    } else if (lexemes[next]!.kind !== 'break' && !/^(?:and|or)$/.test(wordAt(lexemes, next))) break;
  }
  // "blends with l and r" is a phrase of its own.
  if (given.length === 0 || given.map(({ text }) => text).join(' ') === 'l blend and r blend') return null;
  given[0] = { ...given[0]!, start: lexemes[i]!.start };
  return { taken: end - i, given };
}

const syllableTypes =
  /^(?:closed|open|vce|cvce|silent e|magic e|vowel consonant e|vowel team|vowel digraph|vowel pair|r controlled|consonant le|c le)$/;

function shareSyllable(lexemes: readonly Lexeme[], i: number): Notation | null {
  const given: Lexeme[] = [];
  let start = i;
  for (let next = i; next <= lexemes.length; next++) {
    const word = wordAt(lexemes, next);
    if (word !== '' && word !== 'and' && word !== 'or' && !/^syllables?$/.test(word)) continue;
    const type = lexemes.slice(start, next);
    if (!syllableTypes.test(type.map(({ text }) => text).join(' '))) return null;
    given.push(...type, inPlace(type.at(-1)!, 'syllable'));
    if (/^syllables?$/.test(word)) return type[0] === lexemes[i] ? null : { taken: next + 1 - i, given };
    for (start = next; start < lexemes.length; start++) {
      if (lexemes[start]!.kind !== 'break' && !/^(?:and|or)$/.test(wordAt(lexemes, start))) break;
      given.push(lexemes[start]!);
    }
    if (start === next) return null;
    next = start - 1;
  }
  return null;
}

function lettersInEnding(lexemes: readonly Lexeme[], i: number): Notation | null {
  const letters = wordAt(lexemes, i);
  const ending = lexemes[i + 2];
  if (wordAt(lexemes, i + 1) !== 'in' || ending?.kind !== 'word' || ending.mark !== 'suffix') return null;
  const longer = ending.text.startsWith(letters) && ending.text !== letters;
  if (!/^[aeiou]$/.test(letters) || !longer || findSpelling(ending.text, 'suffix') === null) return null;
  return { taken: 3, given: [{ ...ending, start: lexemes[i]!.start }] };
}

/** `k(n)`, `(m)b`: one letter in brackets with nothing between it and its neighbour. */
function bracketedLetter(lexemes: readonly Lexeme[], i: number): Notation | null {
  const run = lexemes.slice(i, i + 4);
  const touch = (from: number, to: number) =>
    run.slice(from, to).every((one, n) => n === 0 || run[from + n - 1]!.end === one.start);
  const letter = (n: number) => run[n]?.kind === 'word' && /^[a-z]{1,2}$/.test(run[n].text);
  const at = run[0]?.kind === 'open' ? 0 : 1;
  if (run.length < 4 || run[at]?.kind !== 'open' || run[at + 2]?.kind !== 'close') return null;
  if (!letter(at + 1) || !letter(at === 0 ? 3 : 0) || !touch(0, 4)) return null;
  const text = at === 0 ? run[1]!.text + run[3]!.text : run[0]!.text + run[2]!.text;
  if (findSpelling(text, 'none') === null) return null;
  return { taken: 4, given: [{ ...run[0]!, kind: 'word', text, mark: 'none', end: run[3]!.end }] };
}

function shortForms(lexemes: readonly Lexeme[], i: number): Notation | null {
  if (!/^(?:with|using|of|from|for)$/.test(wordAt(lexemes, i))) return null;
  let end = i + 1;
  for (let next = end; next < lexemes.length; next++) {
    if (shortened.test(wordAt(lexemes, next))) end = next + 1;
    else if (lexemes[next]!.kind !== 'break' && !/^(?:and|or)$/.test(wordAt(lexemes, next))) break;
  }
  return end === i + 1
    ? null
    : { taken: end - i, given: [{ ...lexemes[i]!, kind: 'note', end: lexemes[end - 1]!.end }] };
}

/** `three sounds`, `both sounds`, and `(both)` in brackets. */
function everySound(lexemes: readonly Lexeme[], i: number): Notation | null {
  let at = i;
  while (/^(?:all|its|their|the|with|has|have|makes?|says?)$/.test(wordAt(lexemes, at))) at += 1;
  const count = wordAt(lexemes, at);
  if (!/^(?:both|two|three|four|five|six|[2-6]|all|different)$/.test(count)) {
    if (
      at === i ||
      !/^(?:sounds?|pronunciations?)$/.test(wordAt(lexemes, at)) ||
      wordAt(lexemes, at - 1) !== 'all'
    )
      return null;
    return every(lexemes, i, at + 1, '');
  }
  let end = at + 1;
  while (/^(?:different|possible|main|common|vowel)$/.test(wordAt(lexemes, end))) end += 1;
  const named = /^(?:sounds|pronunciations|ways)$/.test(wordAt(lexemes, end));
  const alone = count === 'both' && lexemes[end]?.kind === 'close';
  if (!named && !alone) return null;
  return every(
    lexemes,
    i,
    named ? end + 1 : end,
    count === 'both' ? '2' : (numbers[count] ?? (/\d/.test(count) ? count : '')),
  );
}

function every(lexemes: readonly Lexeme[], i: number, end: number, text: string): Notation {
  return {
    taken: end - i,
    given: [{ ...lexemes[i]!, kind: 'every', text, end: lexemes[end - 1]!.end }],
  };
}
