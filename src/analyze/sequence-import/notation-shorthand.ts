import { catalogue } from '../catalogue/catalogue.ts';
import type { PatternId } from '../types.ts';
import { inPlace, longOf, matchWords, type Notation, type NotationRule, wordAt } from './match-words.ts';
import { findSpelling } from './spellings.ts';
import type { Lexeme } from './split-lexemes.ts';

/**
 * Rules for short forms in notes and lists: "init bl", "oo x 2", "hop turns into hope". The first rule that applies is
 * used.
 */
export const shorthandNotations: readonly NotationRule[] = [
  {
    name: 'bl for blend',
    example: 'init bl st, sp',
    counterExample: 'l blends bl, cl',
    applies: (lexemes, i) =>
      /^(?:initial|final|beginning|ending|end|start|consonant|cons|letter)$/.test(wordAt(lexemes, i)) &&
      wordAt(lexemes, i + 1) === 'bl' &&
      lexemes[i + 2] !== undefined &&
      lexemes[i + 2]!.text !== ',' &&
      lexemes[i + 2]!.text !== '/' &&
      // In "init. bl cl fl" bl is itself a blend of the list.
      !/^[a-z]l$/.test(wordAt(lexemes, i + 2))
        ? { taken: 2, given: [lexemes[i]!, inPlace(lexemes[i + 1]!, 'blend')] }
        : null,
  },
  {
    name: 'several sounds by a sign',
    example: 'oo x 2',
    counterExample: 'x, y',
    applies: (lexemes, i) => {
      const found = timesSign(lexemes, i);
      return found === null || i === 0 ? null : found;
    },
  },
  {
    name: 'a word that becomes another with silent e',
    example: 'hop turns into hope',
    counterExample: 'y turns into i',
    applies: (lexemes, i) => {
      const short = wordAt(lexemes, i);
      if (!/^[a-z]*[aeiou][^aeiouwxy]$/.test(short) || short.length < 2) return null;
      let at = i + 1;
      while (/^(?:turns?|turning|becomes?|changes?|grows?|into|to|makes?)$/.test(wordAt(lexemes, at)))
        at += 1;
      if (at === i + 1 || wordAt(lexemes, at) !== `${short}e`) return null;
      const ids = findSpelling(`${short.at(-2)!}_e`, 'none')?.usual;
      return ids === undefined ? null : meant(lexemes, i, at + 1, ids);
    },
  },
  {
    name: 'roots without their name',
    example: 'rupt, struct',
    counterExample: 'port, form',
    applies: bareRoots,
  },
  {
    name: 'the three changes of a base by their verbs',
    example: 'doubling, dropping, changing',
    counterExample: 'doubling, dropping',
    applies: (lexemes, i) => {
      const said = lexemes.slice(i, i + 7).filter(({ kind, text }) => kind === 'word' && text !== 'and');
      const three = said.slice(0, 3).map(({ text }) => text.slice(0, 4));
      if (!/^doub/.test(wordAt(lexemes, i)) || [...three].sort().join(' ') !== 'chan doub drop') return null;
      const last = lexemes.indexOf(said[2]!);
      // "change y to i" has a rule of its own.
      if (/^(?:y|f)$/.test(wordAt(lexemes, last + 1))) return null;
      return meant(lexemes, i, last + 1, ['change-double', 'change-drop-e', 'change-y-to-i']);
    },
  },
  {
    name: 'double, drop or leave a base',
    example: 'double, drop, or change nothing',
    counterExample: 'double, ff',
    applies: (lexemes, i) => {
      if (!/^doubl(?:e|es|ing)$/.test(wordAt(lexemes, i))) return null;
      let at = i + 1;
      while (/^(?:,|\/|&|and|or|the|consonant)$/.test(lexemes[at]?.text ?? '')) at += 1;
      // "double, drop e" has rules of its own.
      if (
        !/^drop(?:s|ping)?$/.test(wordAt(lexemes, at)) ||
        /^(?:the|e|silent|final)$/.test(wordAt(lexemes, at + 1))
      )
        return null;
      at += 1;
      let end = at;
      while (
        /^(?:,|\/|&|and|or|do|leave|keep|change|changing|no|none|nothing|it|as|is|change|alone|same|the)$/.test(
          lexemes[at]?.text ?? '',
        )
      ) {
        at += 1;
        if (/^(?:nothing|none|change|alone|is|same)$/.test(wordAt(lexemes, at - 1))) end = at;
      }
      if (/^(?:y|f)$/.test(wordAt(lexemes, at))) return null;
      return meant(lexemes, i, end, ['change-double', 'change-drop-e']);
    },
  },
  {
    name: 'a long vowel, and behind a comma the silent e that spells it',
    example: 'long a, VCe',
    counterExample: 'long a, ai',
    applies: (lexemes, i) => {
      const [size, vowel, comma] = lexemes.slice(i, i + 3);
      if (size?.text !== 'long' || !/^[aeiou]$/.test(vowel?.text ?? '') || comma?.text !== ',') return null;
      const behind = [wordAt(lexemes, i + 3), wordAt(lexemes, i + 4)].join(' ');
      const words = /^(?:vce|cvce) ?$/.test(behind) ? 1 : /^silent e$/.test(behind) ? 2 : 0;
      if (words === 0 || i + 3 + words < lexemes.length) return null;
      const patterns = vowel!.text === 'u' ? ['u_e-oo', 'u_e-yoo'] : [`${vowel!.text}_e`];
      return meant(lexemes, i, i + 3 + words, patterns);
    },
  },
  {
    name: 'a letter and another consonant',
    example: 's + consonant',
    counterExample: 's + t',
    applies: (lexemes, i) => {
      if (!/^[lrs]$/.test(wordAt(lexemes, i)) || !/^(?:\+|plus|and|&)$/.test(lexemes[i + 1]?.text ?? ''))
        return null;
      const at = wordAt(lexemes, i + 2) === 'another' || wordAt(lexemes, i + 2) === 'a' ? i + 3 : i + 2;
      if (!/^consonants?$/.test(wordAt(lexemes, at))) return null;
      return { taken: at + 1 - i, given: [lexemes[i]!, inPlace(lexemes[at]!, 'blend')] };
    },
  },
  {
    name: 'blends by their letters, in the plural',
    example: "initial blends, l's and r's",
    counterExample: 'initial blends, l and r',
    applies: (lexemes, i) => {
      let at = i;
      while (/^(?:initial|beginning|start|starting|consonant)$/.test(wordAt(lexemes, at))) at += 1;
      if (!/^(?:blends?|clusters?)$/.test(wordAt(lexemes, at))) return null;
      at += 1;
      if (!/^(?:break|is)$/.test(lexemes[at]?.kind ?? '') && wordAt(lexemes, at) !== 'with') return null;
      const given: Lexeme[] = [];
      for (at += 1; at < lexemes.length; at++) {
        const [, letter = ''] = /^([lrs])'s$/.exec(wordAt(lexemes, at)) ?? [];
        if (letter !== '') given.push(inPlace(lexemes[at]!, letter), inPlace(lexemes[at]!, 'blend'));
        else if (lexemes[at]!.kind === 'break' || wordAt(lexemes, at) === 'and') given.push(lexemes[at]!);
        else break;
      }
      return given.length === 0
        ? null
        : { taken: at - i, given: [{ ...given[0]!, start: lexemes[i]!.start }, ...given.slice(1)] };
    },
  },
  {
    name: 'letters in the plural',
    example: "the l's and r's",
    counterExample: "the girl's coat",
    applies: (lexemes, i) => {
      const [, letter = ''] = /^([a-z])'s$/.exec(wordAt(lexemes, i)) ?? [];
      const beside = [lexemes[i - 1], lexemes[i + 1]].some(
        (one) => one === undefined || one.kind === 'break' || one.text === 'and',
      );
      return letter !== '' && beside ? { taken: 1, given: [{ ...lexemes[i]!, text: letter }] } : null;
    },
  },
  {
    name: 'short words that end in their vowel',
    example: 'one-syllable words: be, so, hi',
    counterExample: 'one-syllable words: bed, sop',
    applies: openWords,
  },
  {
    name: 'contractions by themselves',
    example: "can't, I'll",
    counterExample: "the girl's",
    applies: (lexemes, i) => {
      if (i > 0) return null;
      const given: Lexeme[] = [];
      for (const lexeme of lexemes) {
        const id = contracted.find(([ending]) => lexeme.kind === 'word' && ending.test(lexeme.text))?.[1];
        if (id !== undefined) given.push({ ...lexeme, kind: 'meant', ids: [id] });
        else if (lexeme.kind === 'break' || lexeme.text === 'and') given.push(lexeme);
        else return null;
      }
      return given.length < 2 ? null : { taken: lexemes.length, given };
    },
  },
  {
    name: 'a word and its form with an ending',
    example: 'book – books, box – boxes',
    counterExample: 'ship – shop',
    applies: formsOfWords,
  },
  {
    name: 'consonants that are doubled',
    example: 'f, l, s doubled at the end',
    counterExample: 'f, l, s at the end',
    applies: (lexemes, i) => {
      const given: Lexeme[] = [];
      let at = i;
      for (; at < lexemes.length; at++) {
        const { kind, text } = lexemes[at]!;
        if (kind === 'word' && /^[bdfglmnprstz]$/.test(text))
          given.push({ ...lexemes[at]!, text: text.repeat(2) });
        else if (given.length > 0 && (kind === 'break' || text === 'and' || text === 'or'))
          given.push(lexemes[at]!);
        else break;
      }
      if (given.length < 3 || !/^(?:doubled|doubles?|doubling)$/.test(wordAt(lexemes, at))) return null;
      return /^[a-z]$/.test(wordAt(lexemes, at + 1)) ? null : { taken: at + 1 - i, given };
    },
  },
  {
    name: 'letters that children mix up',
    example: 'b, watch reversals b-d',
    counterExample: 'b, d',
    applies: (lexemes, i) => {
      if (!/^(?:reversals?|confus(?:e|es|ed|ing|ion|ions)|mix(?:ed|ing)?-?ups?)$/.test(wordAt(lexemes, i)))
        return null;
      let end = i + 1;
      while (
        lexemes[end]?.kind === 'word' &&
        /^(?:of|with|between|[bdpq](?:-[bdpq])?|and)$/.test(lexemes[end]!.text)
      )
        end += 1;
      return end === i + 1
        ? null
        : { taken: end - i, given: [{ ...lexemes[i]!, kind: 'note', end: lexemes[end - 1]!.end }] };
    },
  },
];

function meant(lexemes: readonly Lexeme[], i: number, end: number, ids: readonly PatternId[]): Notation {
  return { taken: end - i, given: [{ ...lexemes[i]!, kind: 'meant', ids, end: lexemes[end - 1]!.end }] };
}

const timesSign = matchWords(
  '(?:x ?(?:2|3|two|three)|[23] ?x|times (?:two|three))',
  [],
  ([found], whole) => ({
    ...whole,
    kind: 'every',
    text: /3|three/.test(found) ? '3' : '2',
  }),
);

const contracted: readonly (readonly [RegExp, PatternId])[] = [
  [/n't$/, 'contraction-not'],
  [/'ll$/, 'contraction-will'],
  [/'ve$/, 'contraction-have'],
  [/'re$|^i'm$/, 'contraction-are'],
  [/'d$/, 'contraction-would'],
  [/^(?:it|he|she|that|what|there|here|who|where|let)'s$/, 'contraction-is'],
];

/** Returns the patterns that a form of a word adds to or changes in its base. */
function changeBetween(base: string, form: string): readonly PatternId[] | null {
  const stem = base.slice(0, -1);
  const last = base.at(-1)!;
  if (form === `${base}s`) return ['suffix-s'];
  if (form === `${base}es`) return ['suffix-es'];
  if (last === 'y' && new RegExp(`^${stem}i(?:es|ed|er|est|ly|ness|ful)$`).test(form))
    return ['change-y-to-i'];
  if (/fe?$/.test(base) && form === `${base.replace(/fe?$/, '')}ves`) return ['change-f-to-v'];
  if (new RegExp(`^${base}${last}(?:ing|ed|er|est|y)$`).test(form)) return ['change-double'];
  if (last === 'e' && new RegExp(`^${stem}(?:ing|ed|er|est)$`).test(form)) return ['change-drop-e'];
  return null;
}

/** Reads a clause of nothing but words and their forms: "book – books, box – boxes". */
function formsOfWords(lexemes: readonly Lexeme[], i: number): Notation | null {
  if (i > 0) return null;
  const ids: PatternId[] = [];
  let base: string | null = null;
  for (const { kind, text, mark } of lexemes) {
    if (kind === 'break' || kind === 'is' || text === 'and') continue;
    if (kind !== 'word' || mark !== 'none' || !/^[a-z]{3,}$/.test(text)) return null;
    if (base === null) {
      base = text;
      continue;
    }
    const change = changeBetween(base, text);
    if (change === null) return null;
    ids.push(...change);
    base = null;
  }
  return ids.length === 0 || base !== null ? null : meant(lexemes, 0, lexemes.length, [...new Set(ids)]);
}

const roots = new Map(
  catalogue
    .filter(({ id }) => id.startsWith('root-'))
    .flatMap(({ id, letters }) =>
      [...letters.split(' '), id.slice('root-'.length)]
        .filter((text) => text !== '')
        .map((text) => [text, id] as const),
    ),
);

/** Whether a root is not an everyday word. Such a root shows that the others in the list are roots as well. */
const onlyRoot = (text: string) =>
  roots.has(text) && !/^(?:port|form|graph|phone|photo|script|bio|micro|tele)$/.test(text);

/** The most lexemes of a list of roots. */
const LONGEST_LIST = 60;

/** Reads a list of nothing but roots, at least one of which is not a word: "rupt, struct", "scrib/script". */
function bareRoots(lexemes: readonly Lexeme[], i: number): Notation | null {
  const before = lexemes[i - 1];
  if (before !== undefined && before.kind !== 'break' && before.kind !== 'is') return null;
  const given: Lexeme[] = [];
  const names: string[] = [];
  let end = i;
  let depth = 0;
  for (let at = i; at < Math.min(lexemes.length, i + LONGEST_LIST); at++) {
    const { kind, text } = lexemes[at]!;
    // The meaning of a root is in brackets: "tract (pull)".
    if (kind === 'open') depth += 1;
    else if (kind === 'close') {
      depth -= 1;
      end = at + 1;
    } else if (depth > 0 || kind === 'break' || text === 'and') continue;
    else if (kind === 'word' && roots.has(text)) {
      given.push({ ...lexemes[at]!, kind: 'meant', ids: [roots.get(text)!], mark: 'none' });
      names.push(text);
      end = at + 1;
    } else break;
  }
  const greek =
    names.length > 1 && names.every((name) => /^(?:bio|micro|tele|graph|photo|phone)$/.test(name));
  return names.some(onlyRoot) || greek ? { taken: end - i, given } : null;
}

/** The most lexemes in the name of a list of words that end in a vowel ("tiny words"). */
const LONGEST_NAME = 12;

/** Reads a list of words that each end in the vowel they show: "tiny words: me, go, hi". */
function openWords(lexemes: readonly Lexeme[], i: number): Notation | null {
  const named = /^(?:syllable|word|vowel|end|long|open)s?$/;
  if (!named.test(wordAt(lexemes, i)) || !/^(?:is|open|hint)$/.test(lexemes[i + 1]?.kind ?? '')) return null;
  const before = lexemes.slice(Math.max(0, i - LONGEST_NAME), i).map(({ text }) => text);
  const said = before.some((text) => /^(?:one|1|long|short|tiny|little|small|vowels?)$/.test(text));
  if (before.includes('open') || !said) return null;
  let at = i + 1;
  at += 1;
  const vowels: string[] = [];
  let words = 0;
  for (; at < lexemes.length && lexemes[at]!.kind !== 'close'; at++) {
    const { text, mark } = lexemes[at]!;
    if (lexemes[at]!.kind === 'break' || text === 'and') continue;
    const [, vowel] =
      /^[^aeiouy]{1,2}([eioy])$/.exec(lexemes[at]!.kind === 'word' && mark === 'none' ? text : '') ?? [];
    if (vowel === undefined) return null;
    vowels.push(vowel);
    words += 1;
  }
  if (words < 2 || vowels.every((vowel) => vowel === 'y')) return null;
  const end = lexemes[at]?.kind === 'close' ? at + 1 : at;
  return meant(
    lexemes,
    i,
    end,
    [...new Set(vowels)].flatMap((vowel) => longOf[vowel]!),
  );
}
