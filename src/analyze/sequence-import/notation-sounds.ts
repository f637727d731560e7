import type { PatternId } from '../types.ts';
import { type Notation, type NotationRule, wordAt } from './match-words.ts';
import { findPhrase } from './phrases.ts';
import { soundPhrase } from './sound-phrase.ts';
import { findSpelling } from './spellings.ts';
import type { Lexeme } from './split-lexemes.ts';

/**
 * Rules for sounds that apply to several letters, and for several sounds of the same letters. The first rule that
 * applies is used.
 */
export const soundNotations: readonly NotationRule[] = [
  {
    name: 'several sounds of letters, behind a comma',
    example: '-sion, /shun/ and /zhun/',
    counterExample: 'ch, /sh/',
    applies: soundsBehindComma,
  },
  {
    name: 'the sound of a whole list, behind it',
    example: 'ew, ue, ui /oo/',
    counterExample: 'ai, ew /oo/',
    applies: soundBehindList,
  },
  {
    name: 'weak sounds of letters',
    example: 'weak ar and or',
    counterExample: 'weak vowels',
    applies: weakLetters,
  },
  {
    name: 'a long or short sound of the letter before it',
    example: 'y, long i',
    counterExample: 'm, long i',
    applies: lengthBehindComma,
  },
  {
    name: 'which sound of a letter is meant, behind a comma',
    example: 'Aa, short sound',
    counterExample: 'Aa, short vowels',
    applies: soundNamedBehindComma,
  },
  {
    name: 'long vowels before two consonants',
    example: 'i, o long before two consonants',
    counterExample: 'long i, o',
    applies: longClosed,
  },
  {
    name: 'letters behind which their silence is said',
    example: 'gh silent',
    counterExample: 'gh silent letters',
    applies: (lexemes, i) => {
      const silent = wordAt(lexemes, i + 1) === 'silent' ? findPhrase(['silent', wordAt(lexemes, i)]) : null;
      if (silent === null || lexemes[i]!.mark !== 'none' || !ends(lexemes[i + 2])) return null;
      return {
        taken: 2,
        given: [{ ...lexemes[i]!, kind: 'meant', ids: silent.ids, end: lexemes[i + 1]!.end }],
      };
    },
  },
  {
    name: 'letters that say sh before other vowels',
    example: 'ti, ci = /sh/',
    counterExample: 'ti, ci',
    applies: (lexemes, i) => {
      if (divides(lexemes[i - 1])) return null;
      let at = i;
      while (
        at < i + LONGEST_RUN &&
        (/^(?:ti|ci|si|xi|ssi)$/.test(wordAt(lexemes, at)) || (at > i && divides(lexemes[at])))
      )
        at += 1;
      if (at === i) return null;
      if (lexemes[at]?.kind === 'is' || /^(?:says?|as|for|spells?)$/.test(wordAt(lexemes, at))) at += 1;
      // These letters have no row of their own. The teacher is asked.
      return lexemes[at]?.kind === 'sound' && lexemes[at]!.text === 'sh'
        ? { taken: at + 1 - i, given: [{ ...lexemes[i]!, text: 'tici', end: lexemes[at]!.end }] }
        : null;
    },
  },
  {
    name: 'a silent letter, and the endings it is silent in',
    example: 'silent t in -stle, -sten',
    counterExample: 'silent t in castle',
    applies: silentIn,
  },
];

const divides = (lexeme: Lexeme | undefined) =>
  (lexeme?.kind === 'break' && lexeme.text !== 'plus') ||
  (lexeme?.kind === 'word' && /^(?:and|or)$/.test(lexeme.text));
const ends = (lexeme: Lexeme | undefined) =>
  lexeme === undefined || /^(?:break|close|open|is)$/.test(lexeme.kind);

/** The most lexemes of a short run of vowels and the words that join them. */
const LONGEST_RUN = 12;

/** Whether letters can have a sound. */
function canHave(letters: Lexeme | undefined, sound: Lexeme): boolean {
  if (letters?.kind !== 'word') return false;
  const within = soundPhrase(sound.text).within;
  return findSpelling(letters.text, letters.mark)?.candidates.some((id) => within?.has(id)) === true;
}

function soundsBehindComma(lexemes: readonly Lexeme[], i: number): Notation | null {
  if (lexemes[i + 1]?.text !== ',') return null;
  let end = i + 2;
  let sounds = 0;
  for (let at = i + 2; at < lexemes.length; at++) {
    if (divides(lexemes[at]) && sounds > 0) continue;
    if (lexemes[at]!.kind !== 'sound' || !canHave(lexemes[i], lexemes[at]!)) break;
    sounds += 1;
    end = at + 1;
  }
  if (sounds < 2) return null;
  return { taken: end - i, given: [lexemes[i]!, ...lexemes.slice(i + 2, end)] };
}

function soundBehindList(lexemes: readonly Lexeme[], i: number): Notation | null {
  if (divides(lexemes[i - 1])) return null;
  const letters = (at: number) =>
    lexemes[at]?.kind === 'word' && findSpelling(lexemes[at].text, lexemes[at].mark);
  let at = i;
  const list: Lexeme[] = [];
  while (letters(at)) {
    list.push(lexemes[at]!);
    at += 1;
    const between = at;
    while (divides(lexemes[at])) at += 1;
    if (at === between) break;
  }
  const sound = lexemes[at];
  if (list.length < 2 || sound?.kind !== 'sound' || divides(lexemes[at - 1]) || !ends(lexemes[at + 1]))
    return null;
  if (!list.every((one) => canHave(one, sound))) return null;
  const given = lexemes
    .slice(i, at)
    .flatMap((one) => (list.includes(one) ? [one, { ...sound, start: one.start, end: one.end }] : [one]));
  return { taken: at + 1 - i, given };
}

const weakSenses: Readonly<Record<string, readonly PatternId[]>> = {
  a: ['schwa-a'],
  e: ['schwa-e'],
  i: ['schwa-i'],
  o: ['schwa-o'],
  u: ['schwa-u'],
  ar: ['ar-weak'],
  or: ['or-weak'],
  er: ['er'],
};

/** Applies a word to each of the letters after it: "weak ar and or", "unstressed a". */
function weakLetters(lexemes: readonly Lexeme[], i: number): Notation | null {
  if (!/^(?:weak|unstressed|unaccented|reduced)$/.test(wordAt(lexemes, i))) return null;
  const given: Lexeme[] = [];
  let end = i + 1;
  for (let at = i + 1; at < lexemes.length; at++) {
    if (divides(lexemes[at]) && given.length > 0 && !Object.hasOwn(weakSenses, wordAt(lexemes, at))) continue;
    const { text, kind } = lexemes[at]!;
    // In "ar or er" the middle word joins the other two.
    const joins =
      text === 'or' &&
      at > i + 1 &&
      !divides(lexemes[at - 1]) &&
      Object.hasOwn(weakSenses, wordAt(lexemes, at + 1));
    if (joins) continue;
    if (kind !== 'word' || !Object.hasOwn(weakSenses, text)) break;
    given.push(...lexemes.slice(end, at), {
      ...lexemes[at]!,
      kind: 'meant',
      ids: weakSenses[text]!,
      start: end === i + 1 ? lexemes[i]!.start : lexemes[at]!.start,
    });
    end = at + 1;
  }
  return given.length === 0 ? null : { taken: end - i, given };
}

/**
 * Reads a sound after a comma as one of the letters' sounds: "y, long i", "ea, short e". The letters must be able to
 * have the sound, and nothing else may be listed.
 */
function lengthBehindComma(lexemes: readonly Lexeme[], i: number): Notation | null {
  const [letters, comma, size, vowel] = lexemes.slice(i, i + 4);
  if (letters?.kind !== 'word' || comma?.text !== ',' || !/^(?:long|short)$/.test(size?.text ?? ''))
    return null;
  if (!/^(?:[aeiou]|oo)$/.test(vowel?.text ?? '') || letters.text === vowel!.text) return null;
  if (i > 0 || !/^(?:open|close)?$/.test(lexemes[i + 4]?.kind ?? '')) return null;
  const within = findPhrase([size!.text, vowel!.text])?.within;
  const spelling = findSpelling(letters.text, letters.mark);
  if (spelling?.candidates.some((id) => within?.has(id)) !== true) return null;
  return { taken: 4, given: [letters, size!, vowel!] };
}

/** Reads a sound of a single letter, not of all letters: "Aa, short sound", "Cc, hard sound". */
function soundNamedBehindComma(lexemes: readonly Lexeme[], i: number): Notation | null {
  const [letter, comma, which, sound] = lexemes.slice(i, i + 4);
  const found = /^(?:([aeioucg])|([aeioucg])\2)$/i.exec(letter?.kind === 'word' ? letter.text : '');
  if (!found || comma?.text !== ',' || !/^(?:long|short|hard|soft)$/.test(which?.text ?? '')) return null;
  if (i > 0 || !/^sounds?$/.test(sound?.text ?? '') || !/^(?:open|close)?$/.test(lexemes[i + 4]?.kind ?? ''))
    return null;
  const named = (found[1] ?? found[2])!.toLowerCase();
  const phrase = findPhrase([which!.text, named]);
  if (!phrase) return null;
  return { taken: 4, given: [{ ...letter!, kind: 'meant', ids: phrase.ids, end: sound!.end }] };
}

/** Reads the vowels of find and cold: "i, o long before two consonants", "long i and o before two consonants". */
function longClosed(lexemes: readonly Lexeme[], i: number): Notation | null {
  const ids: PatternId[] = [];
  let at = i;
  let long = false;
  for (; at < Math.min(lexemes.length, i + LONGEST_RUN); at++) {
    const { kind, text } = lexemes[at]!;
    if (/^[aio]$/.test(text) && kind === 'word') ids.push(`${text}-long-closed`);
    else if (kind === 'word' && text === 'long') long = true;
    else if (!divides(lexemes[at]) && !/^(?:is|are|as|vowels?)$/.test(text)) break;
  }
  const behind = [0, 1, 2, 3].map((step) => wordAt(lexemes, at + step));
  const more =
    (behind[0] === 'before' && /^(?:two|2)$/.test(behind[1]!) && /^consonants?$/.test(behind[2]!)) ||
    (behind[0] === 'in' && behind[1] === 'closed' && /^syllables?$/.test(behind[2]!));
  if (!long || ids.length === 0 || !more) return null;
  // Endings listed after the phrase show the same vowels.
  if (
    /^(?:is|open)$/.test(lexemes[at + 3]?.kind ?? '') &&
    lexemes.slice(at + 4).every(({ kind, mark }) => kind !== 'word' || mark === 'suffix')
  )
    return {
      taken: lexemes.length - i,
      given: [{ ...lexemes[i]!, kind: 'meant', ids, end: lexemes.at(-1)!.end }],
    };
  return { taken: at + 3 - i, given: [{ ...lexemes[i]!, kind: 'meant', ids, end: lexemes[at + 2]!.end }] };
}

/** Reads a silent letter with the endings it is silent in: "silent t in -stle, -sten". The endings teach nothing more. */
function silentIn(lexemes: readonly Lexeme[], i: number): Notation | null {
  const letter = wordAt(lexemes, i + 1);
  if (wordAt(lexemes, i) !== 'silent' || !/^[a-z]$/.test(letter) || wordAt(lexemes, i + 2) !== 'in')
    return null;
  let end = i + 3;
  let listed = 0;
  for (let at = i + 3; at < lexemes.length; at++) {
    if (divides(lexemes[at]) && listed > 0) continue;
    const { kind, mark, text } = lexemes[at]!;
    if (kind !== 'word' || mark !== 'suffix' || text.length < 3 || !text.includes(letter)) break;
    listed += 1;
    end = at + 1;
  }
  return listed === 0 ? null : { taken: end - i, given: lexemes.slice(i, i + 2) };
}
