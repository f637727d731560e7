import type { PatternId } from '../types.ts';
import { divides, inPlace, type Notation, wordAt } from './match-words.ts';
import { findPhrase, LONGEST_PHRASE } from './phrases.ts';
import { familyMember, findSpelling } from './spellings.ts';
import type { Lexeme } from './split-lexemes.ts';

export function blendsWith(lexemes: readonly Lexeme[], i: number): Notation | null {
  let at = i;
  while (/^(?:initial|beginning|start|starting|consonant|two|letter)$/.test(wordAt(lexemes, at))) at += 1;
  if (!/^(?:blends?|clusters?)$/.test(wordAt(lexemes, at))) return null;
  at += 1;
  while (/^(?:at|the|beginning|starting|made|that|begin|start)$/.test(wordAt(lexemes, at))) at += 1;
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

/** Reads the members of a family that have one of the letters: "final blends with n and m", "silent e with u". */
export function familyWith(lexemes: readonly Lexeme[], i: number): Notation | null {
  const words: string[] = [];
  while (words.length < LONGEST_PHRASE && wordAt(lexemes, i + words.length) !== '') {
    const word = wordAt(lexemes, i + words.length);
    if (/^(?:with|using|containing|that|made|ending|for)$/.test(word)) break;
    words.push(word);
  }
  const heading = words.length === 0 ? null : findPhrase(words);
  if (heading === null || heading.within === null || heading.ids.length < 3) return null;
  let end = i + words.length;
  while (/^(?:that|made|ending|end|have|for)$/.test(wordAt(lexemes, end))) end += 1;
  if (!/^(?:with|using|containing|in)$/.test(wordAt(lexemes, end))) return null;
  end += 1;
  const letters: string[] = [];
  for (let next = end; next < lexemes.length; next++) {
    const { kind, text, mark } = lexemes[next]!;
    if (kind === 'word' && /^[a-z]$/.test(text) && mark === 'none') {
      letters.push(text);
      end = next + 1;
    } else if (kind !== 'break' && !/^(?:and|or|the|letters?)$/.test(text)) break;
  }
  // "with a short vowel" names no letters.
  if (letters.length === 0 || lexemes[end]?.kind === 'word') return null;
  // A list after the letter says which blends are meant: "final blends with l (lt, lp)".
  const first = lexemes[end]?.kind === 'open' ? lexemes[end + 1] : undefined;
  const list =
    /^(?:is|list)$/.test(lexemes[end]?.kind ?? '') ||
    (first !== undefined && findSpelling(first.text, first.mark) !== null);
  if (list) return { taken: end - i, given: lexemes.slice(i, i + words.length) };
  const ids = letters.flatMap((letter) => familyMember(letter, heading.ids)?.usual ?? []);
  if (ids.length === 0 || ids.length === heading.ids.length) return null;
  return { taken: end - i, given: [{ ...lexemes[i]!, kind: 'meant', ids, end: lexemes[end - 1]!.end }] };
}

/** Reads a noun that belongs to both words before it: "initial and final blends". */
export function sharedNoun(lexemes: readonly Lexeme[], i: number): Notation | null {
  const one = wordAt(lexemes, i);
  if (
    one === '' ||
    lexemes[i]!.mark === 'suffix' ||
    !/^(?:and|or|from|vs|versus|[&/+])$/.test(lexemes[i + 1]?.text ?? '')
  )
    return null;
  for (let length = 3; length > 1; length--) {
    const words = Array.from({ length }, (_, n) => wordAt(lexemes, i + 2 + n));
    if (words.includes('') || findPhrase(words) === null) continue;
    const noun = words.slice(1);
    // "hard and soft c" is a phrase of its own.
    if (findPhrase([one, 'and', ...words]) !== null) return null;
    if (findPhrase([one, ...noun]) === null) return null;
    const first = [lexemes[i]!, ...noun.map((text) => inPlace(lexemes[i]!, text))];
    const joint = inPlace(lexemes[i + 1]!, 'and');
    return { taken: 2 + length, given: [...first, joint, ...lexemes.slice(i + 2, i + 2 + length)] };
  }
  return null;
}

const typeIds: readonly (readonly [RegExp, PatternId])[] = [
  [/^closed$/, 'type-closed'],
  [/^open$/, 'type-open'],
  [/^(?:vce|cvce|silent e|magic e|vowel consonant e)$/, 'type-vce'],
  [/^(?:vowel team|vowel digraph|vowel pair)$/, 'type-team'],
  [/^r controlled$/, 'type-r'],
  [/^(?:consonant le|c le)$/, 'consonant-le'],
];

/** Reads words of two syllables of the named types: "closed + open". "Vowel team + r-controlled syllables" are only types. */
export function typesTogether(lexemes: readonly Lexeme[], i: number): Notation | null {
  const ids: PatternId[] = [];
  let end = i;
  let plural = false;
  for (;;) {
    let length = 3;
    let id: PatternId | undefined;
    for (; length > 0 && id === undefined; length--) {
      const words = Array.from({ length }, (_, n) => wordAt(lexemes, end + n)).join(' ');
      id = typeIds.find(([type]) => type.test(words))?.[1];
    }
    if (id === undefined) return null;
    ids.push(id);
    end += length + 1;
    plural = wordAt(lexemes, end) === 'syllables';
    if (/^syllables?$/.test(wordAt(lexemes, end))) end += 1;
    if (lexemes[end]?.text !== '+') break;
    end += 1;
  }
  if (ids.length < 2) return null;
  const whole = { ...lexemes[i]!, end: lexemes[end - 1]!.end };
  return {
    taken: end - i,
    given: [{ ...whole, kind: 'meant', ids: [...(plural ? [] : ['syllables-2']), ...new Set(ids)] }],
  };
}

/** The most words of a syllable type. `LONGEST_LIST` is the most lexemes of a list of types, including its dividers. */
const LONGEST_TYPE = 4;
const LONGEST_LIST = 60;

/** The types that may share the word "syllable" in a list. Stable syllables have no row of their own. */
const syllableTypes = [...typeIds.map(([type]) => type), /^(?:final stable|stable final|stable)$/];

/** Reads a list in which each member is a kind of syllable: "syllable types: closed, open, VCe". */
export function listedTypes(lexemes: readonly Lexeme[], i: number): Notation | null {
  const named = /^syllables?$/.test(wordAt(lexemes, i)) && /^(?:types?|kinds?)$/.test(wordAt(lexemes, i + 1));
  const open = named ? lexemes[i + 2] : undefined;
  if (named ? open?.kind !== 'is' && open?.kind !== 'open' : i > 0) return null;
  // A list of types alone needs no name: "closed, open, VCe".
  if (!named && !/^(?:closed|open)$/.test(wordAt(lexemes, i))) return null;
  const given: Lexeme[] = [];
  let types = 0;
  let at = named ? i + 3 : i;
  while (at < lexemes.length && lexemes[at]!.kind !== 'close') {
    if (divides(lexemes[at])) {
      given.push(lexemes[at]!);
      at += 1;
      continue;
    }
    const length = [4, 3, 2, 1].find((count) => {
      const named = Array.from({ length: count }, (_, n) => wordAt(lexemes, at + n)).join(' ');
      return syllableTypes.some((one) => one.test(named));
    });
    if (length === undefined) return null;
    const type = lexemes.slice(at, at + length);
    given.push(...type, inPlace(type.at(-1)!, 'syllable'));
    types += 1;
    at += length;
    if (/^syllables?$/.test(wordAt(lexemes, at))) {
      // The types in "closed, open and VCe syllables" share the last word.
      if (!named) return null;
      at += 1;
    }
  }
  if (types < (named ? 1 : 3)) return null;
  if (open?.kind === 'open') at += 1;
  return { taken: at - i, given: [{ ...given[0]!, start: lexemes[i]!.start }, ...given.slice(1)] };
}

export function shareSyllable(lexemes: readonly Lexeme[], i: number): Notation | null {
  const given: Lexeme[] = [];
  let start = i;
  for (let next = i; next <= lexemes.length; next++) {
    if (next - start > LONGEST_TYPE || given.length > LONGEST_LIST) return null;
    const word = wordAt(lexemes, next);
    if (word !== '' && word !== 'and' && word !== 'or' && !/^syllables?$/.test(word)) continue;
    const type = lexemes.slice(start, next);
    const named = type.map(({ text }) => text).join(' ');
    if (!syllableTypes.some((one) => one.test(named))) return null;
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
