import { catalogue } from '../catalogue/catalogue.ts';
import type { PatternId } from '../types.ts';
import { divides, type Notation, wordAt } from './match-words.ts';
import { findSpelling, rimes } from './spellings.ts';
import type { Lexeme } from './split-lexemes.ts';

/** Notations for parts of words: endings, roots, contractions and changes of the base. */

const familyOf = new Map(catalogue.map(({ id, family }) => [id, family]));

/**
 * Returns the patterns that an ending with one vowel teaches. For example, -op teaches short o and p, -ell teaches
 * short e and ll, -ake teaches a_e, and -ight teaches igh. Returns null for other endings.
 */
function rimeIds(letters: string): readonly PatternId[] | null {
  if (letters === 'ight') return ['igh', 't'];
  const known = rimes[letters] ?? (/^a[mn]$/.test(letters) ? [`rime-${letters}`] : undefined);
  if (known !== undefined) return known;
  const [, long = ''] = /^([aiou])(?:[bcdfgklmnpstvz])e$/.exec(letters) ?? [];
  if (long !== '') return findSpelling(`${long}_e`, 'none')!.usual;
  const [, vowel = '', end = ''] =
    /^([aeiou])(b|ck|d|g|m|n|p|t|x|sh|ff|ll|ss|zz|tch|mp|nd|nt|st|ft|lt|sk|sp)$/.exec(letters) ?? [];
  if (vowel === '') return null;
  if (findSpelling(letters, 'none')?.candidates.some((id) => /-closed$|-before-l$/.test(id)) === true)
    return null;
  const last = findSpelling(end, 'none')!;
  return [`short-${vowel}`, ...(last.candidates.includes(`end-${end}`) ? [`end-${end}`] : last.usual)];
}

/** Reads endings that are taught as units but are words when alone: "am, an, all". */
export function unitEndings(lexemes: readonly Lexeme[], i: number): Notation | null {
  if (divides(lexemes[i - 1]) || lexemes[i - 1]?.kind === 'word') return null;
  const given: Lexeme[] = [];
  let end = i;
  for (let at = i; at < lexemes.length; at++) {
    if (divides(lexemes[at]) && given.length > 0) continue;
    const { kind, text } = lexemes[at]!;
    const ids =
      kind !== 'word'
        ? undefined
        : text === 'all'
          ? ['rime-all']
          : (rimes[text] ?? (/^a[mn]$/.test(text) ? [`rime-${text}`] : undefined));
    if (ids === undefined) break;
    given.push(...lexemes.slice(end, at), { ...lexemes[at]!, kind: 'meant', ids, mark: 'none' });
    end = at + 1;
  }
  const said = given.filter(({ kind }) => kind === 'meant').map(({ text }) => text);
  const words = said.filter((text) => /^(?:am|an|all)$/.test(text));
  const ends = lexemes[end] === undefined || /^(?:break|close|is|open)$/.test(lexemes[end]!.kind);
  return words.includes('am') && words.includes('an') && said.length > 2 && ends
    ? { taken: end - i, given }
    : null;
}

const isAffix = (letters: string) =>
  findSpelling(letters, 'suffix')?.usual.some((id) => familyOf.get(id) === 'suffix') === true;

/**
 * Reads the rhyming endings of words: "-op, -ot", "-ake, -ame", "-ight". At least one ending of the list must not be a
 * suffix.
 */
export function rimeList(lexemes: readonly Lexeme[], i: number): Notation | null {
  if (divides(lexemes[i - 1]) && lexemes[i - 2]?.mark === 'suffix') return null;
  // "schwa: -en, -on" is about the vowels of the endings.
  if (lexemes.slice(Math.max(0, i - 8), i).some(({ text }) => text === 'schwa')) return null;
  const given: Lexeme[] = [];
  let end = i;
  let suffixes = 0;
  let plain = 0;
  for (let at = i; at < lexemes.length; at++) {
    const lexeme = lexemes[at]!;
    if (divides(lexeme) && given.length > 0) continue;
    if (lexeme.kind !== 'word' || lexeme.mark !== 'suffix') break;
    const ids = rimeIds(lexeme.text);
    if (ids === null) return null;
    if (isAffix(lexeme.text)) suffixes += 1;
    else if (rimes[lexeme.text] === undefined) plain += 1;
    given.push(...lexemes.slice(end, at), { ...lexeme, kind: 'meant', ids, open: true });
    end = at + 1;
  }
  // "-ing, -ed" are suffixes. In "-ang, -ing" both endings rhyme and are read as written.
  if (plain === 0 || (given.length === 1 && suffixes > 0)) return null;
  const letters = given.flatMap(({ text }) => (text === '' || /^\W/.test(text) ? [] : [text]));
  end = endOfRimes(letters, lexemes, end);
  const single = given.length === 1 && !/^(?:ight|[aiou].e)$/.test(lexemes[i]!.text);
  return single || showsWeakEndings(letters, lexemes.slice(end)) ? null : { taken: end - i, given };
}

/** Returns the end of the examples after rhyming endings: "-ig, -in dig, fin". */
function endOfRimes(letters: readonly string[], lexemes: readonly Lexeme[], from: number): number {
  let end = from;
  for (let at = end; at < lexemes.length; at++) {
    const { kind, text } = lexemes[at]!;
    if (kind === 'break') continue;
    if (kind !== 'word' || !letters.some((one) => text.endsWith(one) && text.length > one.length)) break;
    end = at + 1;
  }
  return end;
}

/**
 * Whether examples of several syllables show that the endings are weak and do not rhyme words: "-en, -on (seven,
 * lemon)".
 */
function showsWeakEndings(letters: readonly string[], [sign, ...behind]: readonly Lexeme[]): boolean {
  if (!/^(?:open|is|hint)$/.test(sign?.kind ?? '')) return false;
  const words = behind.filter(({ kind, mark }) => kind === 'word' && mark === 'none').map(({ text }) => text);
  const shown = words.filter((word) => letters.some((one) => word.endsWith(one)));
  return shown.length > 0 && shown.every((word) => (word.match(/[aeiouy]+/g) ?? []).length > 1);
}

const roots = new Map(
  catalogue
    .filter(({ id }) => id.startsWith('root-'))
    .flatMap(({ id, letters }) =>
      [...letters.split(' '), id.slice('root-'.length)].map((text) => [text, id] as const),
    ),
);

/** Word beginnings that may be listed among roots without a hyphen. */
const combining = /^(?:tele|auto|trans|inter|anti|semi|multi|uni|tri)$/;

/**
 * Reads roots after their name: "Root port", "Greek: graph, photo", "Latin roots rupt + struct". Beginnings such as
 * tele- may be among them.
 */
export function rootsByName(lexemes: readonly Lexeme[], i: number): Notation | null {
  let at = i;
  while (
    /^(?:latin|greek|roots?|bases?|and|stems?|(?:word )?parts?|combining|forms?|elements?)$/.test(
      wordAt(lexemes, at),
    ) ||
    lexemes[at]?.text === '&'
  )
    at += 1;
  if (at === i || wordAt(lexemes, i) === 'and' || divides(lexemes[i])) return null;
  if (lexemes[at]?.kind === 'is') at += 1;
  const given: Lexeme[] = [];
  let found = 0;
  let end = at;
  let depth = 0;
  for (; at < lexemes.length; at++) {
    const lexeme = lexemes[at]!;
    // The meaning of a root is in brackets or after a sign: "graph (write), port = carry".
    if (lexeme.kind === 'open' && found > 0) depth += 1;
    else if (lexeme.kind === 'close' && depth > 0) {
      depth -= 1;
      end = at + 1;
    } else if (depth > 0 || (divides(lexeme) && end > i)) continue;
    else if (lexeme.text === '=' && found > 0) {
      while (lexemes[at + 1]?.kind === 'word' && lexemes[at + 1]!.mark === 'none') at += 1;
      end = at + 1;
    }
    if (/^(?:open|close|is)$/.test(lexeme.kind)) continue;
    const root = lexeme.kind === 'word' ? roots.get(lexeme.text) : undefined;
    const begins = lexeme.mark === 'prefix' || (lexeme.kind === 'word' && combining.test(lexeme.text));
    if (root === undefined && !begins) break;
    if (root !== undefined) found += 1;
    given.push(
      ...(given.length > 0 ? lexemes.slice(end, at) : []),
      root === undefined
        ? { ...lexeme, mark: 'prefix' }
        : { ...lexeme, kind: 'meant', ids: [root], mark: 'none' },
    );
    end = at + 1;
  }
  if (found === 0) return null;
  // Words that show the roots may follow: "— portable, distract".
  const names = given.flatMap(({ text, kind }) => (kind === 'meant' ? [text] : []));
  for (at = end; at < lexemes.length; at++) {
    const { kind, text } = lexemes[at]!;
    if (kind === 'break' || (kind === 'is' && at === end)) continue;
    if (kind !== 'word' || !names.some((name) => text.length > name.length && text.includes(name))) break;
    end = at + 1;
  }
  return { taken: end - i, given: [{ ...given[0]!, start: lexemes[i]!.start }, ...given.slice(1)] };
}

const secondWords: Readonly<Record<string, PatternId>> = {
  not: 'contraction-not',
  will: 'contraction-will',
  is: 'contraction-is',
  has: 'contraction-is',
  have: 'contraction-have',
  would: 'contraction-would',
  had: 'contraction-would',
  are: 'contraction-are',
  // I'm is in the row of we're.
  am: 'contraction-are',
  // These have no row of their own: let's, and contractions of pronouns and verbs.
  ...Object.fromEntries(
    'us be to verb verbs pronoun pronouns'.split(' ').map((word) => [word, 'contraction']),
  ),
};

/** Reads the kinds of contractions: "contractions with not, is, will", "contractions (not)". */
export function contractionKinds(lexemes: readonly Lexeme[], i: number): Notation | null {
  if (!/^contractions?$/.test(wordAt(lexemes, i))) return null;
  let at = i + 1;
  while (
    /^(?:with|of|using|from|made|for|the|words?)$/.test(wordAt(lexemes, at)) ||
    /^(?:is|open)$/.test(lexemes[at]?.kind ?? '')
  )
    at += 1;
  const ids: PatternId[] = [];
  let end = at;
  for (; at < lexemes.length; at++) {
    // "not (can't), is (he's)"
    if (ids.length > 0 && lexemes[at]!.kind === 'open' && /'/.test(lexemes[at + 1]?.text ?? '')) {
      const close = lexemes.findIndex(({ kind }, place) => place > at && kind === 'close');
      if (close < 0) break;
      at = close;
      end = close + 1;
      continue;
    }
    if ((divides(lexemes[at]) || wordAt(lexemes, at) === 'with') && ids.length > 0) continue;
    const id = Object.hasOwn(secondWords, wordAt(lexemes, at)) ? secondWords[wordAt(lexemes, at)] : undefined;
    if (id === undefined) break;
    ids.push(id);
    end = at + 1;
  }
  if (lexemes[end]?.kind === 'close') end += 1;
  if (/^(?:family|families|words?|contractions?|group)$/.test(wordAt(lexemes, end))) end += 1;
  // "contractions will be taught" and "contractions is the focus" are sentences.
  if (ids.length === 0 || lexemes[end]?.kind === 'word') return null;
  return {
    taken: end - i,
    given: [{ ...lexemes[i]!, kind: 'meant', ids: [...new Set(ids)], end: lexemes[end - 1]!.end }],
  };
}

/** Applies "soft" or "hard" to the letters before it: "c and g, soft", "g (soft)". */
export function softBehind(lexemes: readonly Lexeme[], i: number): Notation | null {
  const letters: string[] = [];
  let at = i;
  for (; at < lexemes.length; at++) {
    const text = wordAt(lexemes, at);
    if (/^[cg]$/.test(text) && lexemes[at]!.mark === 'none') letters.push(text);
    else if (!divides(lexemes[at]) && lexemes[at]!.kind !== 'open') break;
  }
  const size = wordAt(lexemes, at);
  const bound = lexemes[at - 1]?.kind === 'open' || lexemes[at - 1]?.text === ',';
  const after = lexemes[at + 1];
  const ends =
    after === undefined ||
    after.kind === 'close' ||
    (after.kind === 'break' && lexemes[at - 1]?.kind !== 'break');
  if (letters.length === 0 || !/^(?:soft|hard)$/.test(size) || !bound || !ends) return null;
  const end = after?.kind === 'close' ? at + 2 : at + 1;
  // In "consonants g (hard), h" the word "hard" adds nothing to the letters.
  if (size === 'hard')
    return { taken: end - i, given: lexemes.slice(i, at).filter(({ kind }) => kind !== 'open') };
  const ids = letters.map((letter) => (size === 'soft' ? `soft-${letter}` : letter));
  return { taken: end - i, given: [{ ...lexemes[i]!, kind: 'meant', ids, end: lexemes[end - 1]!.end }] };
}

/**
 * Reads the doubling of a consonant before an ending: "double, drop e", "double + ing". Double letters as in hill are
 * not read.
 */
export function doubleBeside(lexemes: readonly Lexeme[], i: number): Notation | null {
  if (!/^(?:double|doubling)$/.test(wordAt(lexemes, i)) || lexemes[i + 1]?.kind !== 'break') return null;
  const next = lexemes.slice(i + 2, i + 4);
  const isChange =
    /^(?:drop|dropping|drops|ing|ed|y)$/.test(next[0]?.text ?? '') &&
    !(next[0]?.text === 'y' && next[1]?.text !== 'to');
  return isChange ? { taken: 1, given: [{ ...lexemes[i]!, kind: 'meant', ids: ['change-double'] }] } : null;
}
