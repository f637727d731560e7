import type { PatternId } from '../types.ts';
import { fits } from './fits.ts';
import { type Notation, wordAt } from './match-words.ts';
import { findSpelling } from './spellings.ts';
import type { Lexeme } from './split-lexemes.ts';

/** Notations for changes of the base before an ending, and for the owners of possessives. */

const changes: readonly (readonly [from: RegExp, to: RegExp, ids: readonly PatternId[]])[] = [
  [/^y$/, /^(?:i|ie|ies|ied|ier|iest)$/, ['change-y-to-i']],
  [/^(?:f|fe|ff)$/, /^(?:v|ve|ves)$/, ['change-f-to-v']],
];

const size = /^(?:the|a|an|final|last|letter|ending|end|with)$/;

/**
 * Reads the letters that change and the letters they become: "y→i", "change the final y to i", "f or fe becomes ves",
 * "-f to -ves".
 */
export function changeOfBase(lexemes: readonly Lexeme[], i: number): Notation | null {
  let at = i;
  const text = (place: number) => wordAt(lexemes, place);
  const skip = (words: RegExp) => {
    while (words.test(text(at))) at += 1;
  };
  const verb =
    /^(?:chang(?:e|es|ed|ing)|turn(?:s|ed|ing)?|swap(?:s|ped|ping)?|replac(?:e|es|ed|ing)|switch(?:es|ing)?)$/;
  if (verb.test(text(at))) at += 1;
  const led = at > i;
  if (led) skip(size);
  const from = text(at);
  const change = changes.filter(([one]) => one.test(from));
  if (change.length === 0) return null;
  at += 1;
  // "f or fe", "f/fe"
  if (/^(?:or|and|[/,&])$/.test(lexemes[at]?.text ?? '') && change.some(([one]) => one.test(text(at + 1))))
    at += 2;
  const joined = lexemes[at];
  const says = /^(?:to|into|becomes?|becoming|changes|changing|changed|turns|turned|turning|for|with)$/;
  skip(/^(?:is|gets)$/);
  if (joined?.kind === 'is' && joined.text === '→') at += 1;
  else if (says.test(text(at)) && (led || !/^(?:for|with)$/.test(text(at)))) at += 1;
  else return null;
  skip(/^(?:to|into|in|a|an|the)$/);
  const found = change.find(([, to]) => to.test(text(at)));
  if (found === undefined) return null;
  at += 1;
  // Several results and endings may follow: "y to i or ie", "f to v and add es", "y to ies/ied".
  while (
    /^(?:or|and|[/,&+])$/.test(lexemes[at]?.text ?? '') &&
    (found[1].test(text(at + 1)) || /^(?:add|adding|es|ed|s)$/.test(text(at + 1)))
  )
    at += /^add/.test(text(at + 1)) && /^e?[sd]$/.test(text(at + 2)) ? 3 : 2;
  skip(/^(?:rule|change)$/);
  if (/^(?:in|with)$/.test(text(at)) && /^(?:the|plurals?)$/.test(text(at + 1)))
    at += text(at + 1) === 'the' ? 3 : 2;
  else if (text(at) === 'for' && /^(?:plurals?|nouns?)$/.test(text(at + 1))) at += 2;
  else if (/^plurals?$/.test(text(at))) at += 1;
  return {
    taken: at - i,
    given: [{ ...lexemes[i]!, kind: 'meant', ids: found[2], end: lexemes[at - 1]!.end }],
  };
}

/** Reads the words after a change that add nothing to it: "Double, then add", "drop e and add -ing". */
export function thenAdd(lexemes: readonly Lexeme[], i: number): Notation | null {
  const before = lexemes
    .slice(Math.max(0, i - 4), i)
    .some(({ text }) => /^(?:doubl|drop|chang|e$|y$|i$)/.test(text));
  if (!before) return null;
  let at = i;
  while (lexemes[at]?.text === ',' || /^(?:then|and|before|when)$/.test(wordAt(lexemes, at))) at += 1;
  if (at === i || !/^(?:add|adding|you|we)$/.test(wordAt(lexemes, at))) return null;
  while (
    /^(?:add|adding|you|we|it|the|a|an|any|suffix|suffixes|ending|endings|vowel|on)$/.test(
      wordAt(lexemes, at),
    )
  )
    at += 1;
  return { taken: at - i, given: [{ ...lexemes[i]!, kind: 'note', text: '', end: lexemes[at - 1]!.end }] };
}

/**
 * Reads the doubling of a consonant before an ending: "Double, then add", "doubling in longer words". Double letters as
 * in hill are not read.
 */
export function doubleThen(lexemes: readonly Lexeme[], i: number): Notation | null {
  if (!/^(?:double|doubling)$/.test(wordAt(lexemes, i))) return null;
  let at = i + 1;
  // "double letters in longer words" means double letters as in hill.
  const noun =
    wordAt(lexemes, i) === 'doubling'
      ? /^(?:the|a|final|last|consonants?|letters?|rule)$/
      : /^(?:the|a|final|last|consonant|letter|rule)$/;
  while (noun.test(wordAt(lexemes, at))) at += 1;
  // The place may follow directly: "double before a vowel suffix".
  if (at === i + 1 && /^(?:before|when)$/.test(wordAt(lexemes, at)))
    return { taken: 1, given: [{ ...lexemes[i]!, kind: 'meant', ids: ['change-double'] }] };
  const longer = /^(?:in|of|for|with)$/.test(wordAt(lexemes, at)) ? at + 1 : null;
  if (longer !== null) {
    let end = longer;
    let long = false;
    for (
      ;
      /^(?:longer|two|2|three|more|or|multi|multisyllabic|multisyllable|polysyllabic|syllable|syllables|words?|bases?|verbs?|stressed|last|the|with)$/.test(
        wordAt(lexemes, end),
      );
      end += 1
    )
      long ||= /^(?:longer|two|2|multi.*|polysyllabic|stressed|syllables?)$/.test(wordAt(lexemes, end));
    return long
      ? {
          taken: end - i,
          given: [
            { ...lexemes[i]!, kind: 'meant', ids: ['change-double-longer'], end: lexemes[end - 1]!.end },
          ],
        }
      : null;
  }
  const then = thenAdd(lexemes, at);
  if (then === null || at > i + 1) return null;
  const taken = at - i + then.taken;
  return {
    taken,
    given: [{ ...lexemes[i]!, kind: 'meant', ids: ['change-double'], end: lexemes[i + taken - 1]!.end }],
  };
}

const one = /^(?:singular|one|single|1)$/;
const several = /^(?:plural|plurals|several|many|more|two|some)$/;

/**
 * Reads the kinds of possessives. "Possessives, one owner", "plural possessives" and "singular possessive ('s)" each
 * name one of the two kinds. Both kinds together are all possessives.
 */
export function possessiveKinds(lexemes: readonly Lexeme[], i: number): Notation | null {
  const noun = (place: number) =>
    /^possessives?$/.test(wordAt(lexemes, place)) ||
    (/^apostrophes?$/.test(wordAt(lexemes, place)) &&
      /^(?:for|possessive)$/.test(wordAt(lexemes, place === i ? i + 1 : i)));
  const isKind = (place: number) => one.test(wordAt(lexemes, place)) || several.test(wordAt(lexemes, place));
  let at = i;
  const kinds: string[] = [];
  if (isKind(i)) {
    kinds.push(wordAt(lexemes, i));
    at = /^(?:and|or|[&/+])$/.test(lexemes[i + 1]?.text ?? '') && isKind(i + 2) ? i + 3 : i + 1;
    if (at === i + 3) kinds.push(wordAt(lexemes, i + 2));
    if (!noun(at)) return null;
    at += 1;
  } else {
    if (!noun(i)) return null;
    at += 1;
    const open = lexemes[at]?.kind === 'open';
    let end = at;
    for (; end < Math.min(lexemes.length, at + 12); end++) {
      const { kind, text } = lexemes[end]!;
      if (isKind(end)) {
        if (wordAt(lexemes, end - 1) !== 'than') kinds.push(text);
      } else if (
        /^(?:is|open|close)$/.test(kind) ||
        text === "'s" ||
        text === "s'" ||
        /^(?:and|or|[&/+,])$/.test(text)
      )
        continue;
      else if (!/^(?:for|of|with|nouns?|owners?|than|forms?|words?|ones?|form|apostrophes?)$/.test(text))
        break;
    }
    if (kinds.length === 0) return null;
    at = open && lexemes[end]?.kind === 'close' ? end + 1 : end;
    while (/^(?:break|is|open)$/.test(lexemes[at - 1]!.kind)) at -= 1;
    if (lexemes[at]?.kind === 'close' && lexemes.slice(i, at).some(({ kind }) => kind === 'open')) at += 1;
  }
  if (/^(?:nouns?|apostrophes?)$/.test(wordAt(lexemes, at))) at += 1;
  if (/^(?:'s|s')$/.test(lexemes[at]?.text ?? '')) at += 1;
  const ofOne = kinds.some((kind) => one.test(kind));
  const ofMany = kinds.some((kind) => several.test(kind));
  const ids = ofOne && ofMany ? ['possessive'] : ofOne ? ['possessive-one'] : ['possessive-several'];
  return { taken: at - i, given: [{ ...lexemes[i]!, kind: 'meant', ids, end: lexemes[at - 1]!.end }] };
}

/** Reads a word that shows the letters after it: "the cow kind of ow". */
export function kindOfLetters(lexemes: readonly Lexeme[], i: number): Notation | null {
  const at = wordAt(lexemes, i) === 'the' ? i + 1 : i;
  const word = lexemes[at];
  if (word?.kind !== 'word' || !/^(?:kind|type|sound|sort|version|family)$/.test(wordAt(lexemes, at + 1)))
    return null;
  const letters = lexemes[at + 3];
  if (wordAt(lexemes, at + 2) !== 'of' || letters?.kind !== 'word' || !fits(word.text, letters.text))
    return null;
  if (findSpelling(letters.text, letters.mark) === null) return null;
  const shown = { ...letters, start: lexemes[i]!.start };
  return {
    taken: at + 4 - i,
    given: [shown, { ...shown, kind: 'hint', text: '' }, { ...word, end: letters.end }],
  };
}

/** Reads a place after its noun: "two-consonant blends, initial", "blends (final)". */
export function placeBehind(lexemes: readonly Lexeme[], i: number): Notation | null {
  if (!/^(?:blends?|clusters?)$/.test(wordAt(lexemes, i))) return null;
  const opens = lexemes[i + 1]?.kind === 'open';
  const dash = lexemes[i + 1]?.kind === 'is' && lexemes[i + 1]!.text !== ':';
  if (!opens && !dash && lexemes[i + 1]?.text !== ',' && lexemes[i + 1]?.text !== '-') return null;
  const place = wordAt(lexemes, i + 2);
  if (!/^(?:initial|beginning|start|starting|onset|final|ending|end)$/.test(place)) return null;
  const after = lexemes[i + 3];
  if (opens ? after?.kind !== 'close' : after !== undefined && !/^(?:break|open|is|close)$/.test(after.kind))
    return null;
  const side = /^(?:final|end|ending)$/.test(place) ? 'at the end' : 'at the beginning';
  const end = opens ? i + 4 : i + 3;
  return {
    taken: end - i,
    given: [lexemes[i]!, { ...lexemes[i + 2]!, kind: 'note', text: side, end: lexemes[end - 1]!.end }],
  };
}
