import { catalogue } from '../catalogue/catalogue.ts';
import { divides, type Notation, wordAt } from './match-words.ts';
import type { Lexeme } from './split-lexemes.ts';

const units = new Map(
  catalogue.filter(({ family }) => family === 'rime').map(({ id, letters }) => [letters, id]),
);
const families = /^(?:famil(?:y|ies)|rimes?|units?)$/;

/** Reads word families whose endings are taught as units: "word families -all, -am", "-am family". */
export function unitFamilies(lexemes: readonly Lexeme[], i: number): Notation | null {
  const word = wordAt(lexemes, i) === 'word' ? i + 1 : i;
  const named = families.test(wordAt(lexemes, word));
  if (!named && word > i) return null;
  const first = named ? word + 1 : i;
  const list = listOfUnits(lexemes, named && lexemes[first]?.kind === 'is' ? first + 1 : first);
  if (list === null) return null;
  let { end } = list;
  if (!named) {
    // The name may follow the endings: "-am family", "-all word families".
    if (wordAt(lexemes, end) === 'word') end += 1;
    if (!families.test(wordAt(lexemes, end))) return null;
    end += 1;
  }
  const [unit, ...others] = list.given;
  return { taken: end - i, given: [{ ...unit!, start: lexemes[i]!.start }, ...others] };
}

/** Reads word families with one vowel, which teach this vowel. If the vowel is not named, the result is a guess. */
export function shortFamilies(lexemes: readonly Lexeme[], i: number): Notation | null {
  return familiesNamedFirst(lexemes, i) ?? familiesNamedBehind(lexemes, i);
}

/** Reads word families named before their endings: "short a word families (-at, -an)", "word families -ap, -at". */
function familiesNamedFirst(lexemes: readonly Lexeme[], i: number): Notation | null {
  const short = wordAt(lexemes, i) === 'short';
  const named = short ? wordAt(lexemes, i + 1) : '';
  if (short ? !/^[aeiou]$/.test(named) : i > 0) return null;
  let at = short ? i + 2 : i;
  while (/^(?:vowel|cvc|word)$/.test(wordAt(lexemes, at))) at += 1;
  if (!/^(?:famil(?:y|ies)|rimes?|chunks?|rhymes?)$/.test(wordAt(lexemes, at))) return null;
  const sign = lexemes[at + 1]?.kind;
  const list = endingsOfVowel(lexemes, /^(?:open|is)$/.test(sign ?? '') ? at + 2 : at + 1, named);
  if (list === null || lexemes[list.end]?.kind === 'word') return null;
  const closes = sign === 'open' && lexemes[list.end]?.kind === 'close';
  return vowelMeant(lexemes, i, closes ? list.end + 1 : list.end, list.vowel, short);
}

/** Reads word families named after their endings: "-ap, -at word families". */
function familiesNamedBehind(lexemes: readonly Lexeme[], i: number): Notation | null {
  const list = i === 0 ? endingsOfVowel(lexemes, 0, '') : null;
  if (list === null) return null;
  const at = wordAt(lexemes, list.end) === 'word' ? list.end + 1 : list.end;
  if (!families.test(wordAt(lexemes, at)) || lexemes[at + 1]?.kind === 'word') return null;
  return vowelMeant(lexemes, i, at + 1, list.vowel, false);
}

function vowelMeant(
  lexemes: readonly Lexeme[],
  i: number,
  end: number,
  vowel: string,
  sure: boolean,
): Notation {
  const whole: Lexeme = {
    ...lexemes[i]!,
    kind: 'meant',
    ids: [`short-${vowel}`],
    end: lexemes[end - 1]!.end,
  };
  return { taken: end - i, given: [sure ? whole : { ...whole, open: true }] };
}

/**
 * Reads endings of one vowel and a consonant from a place on. Returns null if there is none, or if each ending is a
 * unit with a row of its own.
 */
function endingsOfVowel(
  lexemes: readonly Lexeme[],
  from: number,
  named: string,
): { readonly vowel: string; readonly end: number } | null {
  let vowel = named;
  let end = 0;
  let others = named === '' ? 0 : 1;
  for (let at = from; at < lexemes.length; at++) {
    const { text, mark } = lexemes[at]!;
    if (end > 0 && divides(lexemes[at])) continue;
    const [, own = ''] = /^([aeiou])[bdgmnptx]$/.exec(mark === 'prefix' ? '' : wordAt(lexemes, at)) ?? [];
    if (own === '' || (vowel !== '' && own !== vowel) || (named === '' && mark === 'none')) break;
    vowel = own;
    if (!units.has(text)) others += 1;
    end = at + 1;
  }
  return end > 0 && others > 0 ? { vowel, end } : null;
}

/** Reads endings from a place on, each with a row of its own. Returns null if there is no ending, or if one has no row. */
function listOfUnits(
  lexemes: readonly Lexeme[],
  from: number,
): { readonly given: readonly Lexeme[]; readonly end: number } | null {
  const given: Lexeme[] = [];
  let end = from;
  for (let at = from; at < lexemes.length; at++) {
    if (divides(lexemes[at]) && given.length > 0) continue;
    const { kind, text, mark } = lexemes[at]!;
    if (kind !== 'word') break;
    const id = units.get(text);
    if (id === undefined) {
      // In "-at, -am" some rhymes have no row of their own.
      if (mark === 'suffix' || divides(lexemes[at - 1])) return null;
      break;
    }
    given.push(...lexemes.slice(end, at), { ...lexemes[at]!, kind: 'meant', ids: [id], mark: 'none' });
    end = at + 1;
  }
  return given.length === 0 ? null : { given, end };
}
