import type { PatternId } from '../types.ts';
import {
  becomes,
  divides,
  inPlace,
  matchWords,
  type Notation,
  type NotationRule,
  note,
  wordAt,
} from './match-words.ts';
import { changeOfBase } from './notation-changes.ts';
import { shortFamilies, unitFamilies } from './notation-word-families.ts';
import { findPhrase } from './phrases.ts';
import { soundPhrase } from './sound-phrase.ts';
import { findSpelling } from './spellings.ts';
import type { Lexeme } from './split-lexemes.ts';

const bothEnds = note(
  '(?:at|in) (?:the )?(?:beginning|start|front) and (?:at |in )?(?:the )?(?:end|back)(?: of (?:a |the )?words?)?',
);
const bothVoices = becomes(
  'note',
  '(?:both )?(?:the )?(?:voiced|unvoiced|voiceless) (?:and|or) (?:the )?(?:voiced|unvoiced|voiceless)(?: sounds?)?',
);
const bothSizes = matchWords('(?:both )?(?:long|short) and (?:long|short)(?: sounds?)?', [], (_, whole) => ({
  ...whole,
  kind: 'every',
  text: '2',
}));
const followed = matchWords('(?:when |is |are |if )?followed by', [], (_, whole) => ({
  ...whole,
  text: 'before',
}));

/** Rules for statements about letters: their sound, their place, their family. The first rule that applies is used. */
export const saidNotations: readonly NotationRule[] = [
  {
    name: 'letters and the sound they are said to have',
    example: 'y to spell long e',
    counterExample: 'y to spell candy',
    applies: lettersSay,
  },
  {
    name: 'a sound and the letters that spell it',
    example: 'the /n/ sound of kn',
    counterExample: 'the /n/ sound of ai',
    applies: soundOfLetters,
  },
  {
    name: 'the place of a blend that may stand at either end',
    example: 'st (final)',
    counterExample: 'st (fast)',
    applies: placedBlend,
  },
  {
    name: 'endings of word families that are taught as units',
    example: 'word families -all, -am',
    counterExample: 'word families -at, -am',
    applies: unitFamilies,
  },
  {
    name: 'word families of one short vowel',
    example: 'short a word families -at, -ap',
    counterExample: 'short a words -ed, -ing',
    applies: shortFamilies,
  },
  {
    name: 'a part of a word that is named behind it',
    example: '-an as a suffix',
    counterExample: '-an words',
    applies: affixNamedBehind,
  },
  {
    name: 'letters at both ends of words',
    example: 'sh at the beginning and end: shop',
    counterExample: 'sh at the beginning',
    applies: (lexemes, i) => (candidatesOf(lexemes[i - 1]).length === 0 ? null : bothEnds(lexemes, i)),
  },
  {
    name: 'both ways to say th',
    example: 'th, both voiced and unvoiced: that',
    counterExample: 'voiced th: that',
    applies: (lexemes, i) => {
      const letters = /^(?:break|open|is)$/.test(lexemes[i - 1]?.kind ?? '')
        ? lexemes[i - 2]
        : lexemes[i - 1];
      if (letters?.text !== 'th') return null;
      return bothVoices(lexemes, i);
    },
  },
  {
    name: 'long and short of the letters before it',
    example: 'oo, long and short sounds',
    counterExample: 'vowels, long and short sounds',
    applies: (lexemes, i) => {
      const letters = /^(?:break|open|is)$/.test(lexemes[i - 1]?.kind ?? '') ? lexemes[i - 2] : undefined;
      if (!/^(?:oo|[aeiou]|ea)$/.test(letters?.text ?? '') || letters!.kind !== 'word') return null;
      return bothSizes(lexemes, i);
    },
  },
  {
    name: 'kinds of words that an ending is added to',
    example: '-s, plural and verbs',
    counterExample: '-s, plural',
    applies: note(
      '(?:for |on |with )?(?:plurals?|nouns?|naming words)(?: nouns?)? (?:and|or) (?:verbs?|action words)',
    ),
  },
  {
    name: 'what letters are followed by',
    example: 'c followed by e, i or y',
    counterExample: 'c before e',
    applies: (lexemes, i) => {
      const found = followed(lexemes, i);
      return found === null || candidatesOf(lexemes[i - 1]).length === 0 ? null : found;
    },
  },
  {
    name: 'another letter of blends',
    example: 'beginning blends with l (glad) and with r',
    counterExample: 'digraphs and words with r',
    applies: (lexemes, i) => {
      if (wordAt(lexemes, i) !== 'with' || !/^[lrs]$/.test(wordAt(lexemes, i + 1))) return null;
      const before = lexemes.slice(Math.max(0, i - 24), i);
      if (wordAt(lexemes, i - 1) !== 'and' || !before.some(({ text }) => /^(?:blend|cluster)s?$/.test(text)))
        return null;
      const letter = { ...lexemes[i + 1]!, start: lexemes[i]!.start };
      return { taken: 2, given: [letter, inPlace(letter, 'blend')] };
    },
  },
  {
    name: 'where in words a part stands, in a list',
    example: 'ai, words ending in -ed',
    counterExample: 'words ending in rain',
    applies: (lexemes, i) => {
      if (i === 0 || !divides(lexemes[i - 1]) || !/^words?$/.test(wordAt(lexemes, i))) return null;
      let at = i + 1;
      while (/^(?:that|which|can|often)$/.test(wordAt(lexemes, at))) at += 1;
      const [, first] = /^(?:(begin|start)|end)(?:s|ing|ning)?$/.exec(wordAt(lexemes, at)) ?? [
        undefined,
        undefined,
      ];
      if (!/^(?:begin|start|end)(?:s|ing|ning)?$/.test(wordAt(lexemes, at))) return null;
      if (!/^(?:in|with)$/.test(wordAt(lexemes, at + 1)) || candidatesOf(lexemes[at + 2]).length === 0)
        return null;
      const whole = { ...lexemes[i]!, end: lexemes[at + 1]!.end };
      return { taken: at + 2 - i, given: [inPlace(whole, first === undefined ? 'final' : 'initial')] };
    },
  },
  {
    name: 'letters that go together',
    example: 'qu as a team',
    counterExample: 'ai as in team',
    applies: (lexemes, i) => {
      if (candidatesOf(lexemes[i]).length === 0 || !/^(?:as|is|are|makes?)$/.test(wordAt(lexemes, i + 1)))
        return null;
      let at = i + 2;
      while (/^(?:a|an|one|the|letter|two|consonant|vowel|spelling)$/.test(wordAt(lexemes, at))) at += 1;
      const joins = at > i + 2 && /^(?:team|teams|unit|pair|digraph|sound)$/.test(wordAt(lexemes, at));
      const ends = lexemes[at + 1] === undefined || /^(?:break|close|open)$/.test(lexemes[at + 1]!.kind);
      return joins && ends ? { taken: at + 1 - i, given: [{ ...lexemes[i]!, end: lexemes[at]!.end }] } : null;
    },
  },
  {
    name: 'a plural and how its base changes',
    example: 'plurals where f changes to v',
    counterExample: 'plurals and y as long i',
    applies: (lexemes, i) => {
      if (!/^plurals?$/.test(wordAt(lexemes, i))) return null;
      let at = i + 1;
      while (
        lexemes[at]?.kind === 'is' ||
        /^(?:where|when|that|which|in|with|whose|of|the|a|change|nouns?|words?|ending|by|made|forms?|final)$/.test(
          wordAt(lexemes, at),
        )
      )
        at += 1;
      const change = at > i + 1 ? changeOfBase(lexemes, at) : null;
      if (change === null) return null;
      return { taken: at + change.taken - i, given: [{ ...change.given[0]!, start: lexemes[i]!.start }] };
    },
  },
  {
    name: 'silent e with the vowels it makes long',
    example: 'silent e with long a and long i',
    counterExample: 'silent e and long a',
    applies: silentWith,
  },
  {
    name: 'w and the vowel behind it',
    example: 'w plus or',
    counterExample: 'w, or',
    applies: (lexemes, i) => {
      if (wordAt(lexemes, i) !== 'w') return null;
      let at = i + 1;
      while (
        /^(?:plus|and|with|before|followed|by|then)$/.test(lexemes[at]?.text ?? '') ||
        lexemes[at]?.text === '+'
      )
        at += 1;
      const vowel = wordAt(lexemes, at);
      const joined = at > i + 1 && wordAt(lexemes, i + 1) !== 'and';
      if (!joined || !/^(?:ar|or|a)$/.test(vowel)) return null;
      return { taken: at + 1 - i, given: [{ ...lexemes[i]!, text: `w${vowel}`, end: lexemes[at]!.end }] };
    },
  },
  {
    name: 'letters with the one of them that is silent',
    example: 'mb with silent b',
    counterExample: 'mb with silent k',
    applies: (lexemes, i) => {
      const [letters, joint, silent, letter] = lexemes.slice(i, i + 4);
      if (candidatesOf(letters).length === 0 || !/^(?:with|where|has|and)$/.test(joint?.text ?? ''))
        return null;
      if (silent?.text !== 'silent' || letter?.text.length !== 1 || !letters!.text.includes(letter.text))
        return null;
      return letters!.text.length === 1 ? null : { taken: 4, given: [{ ...letters!, end: letter.end }] };
    },
  },
  {
    name: 'contractions with their second word first',
    example: 'not contractions',
    counterExample: 'no contractions',
    applies: (lexemes, i) => {
      const id = secondWords.get(wordAt(lexemes, i));
      if (i > 0 || id === undefined || !/^contractions?$/.test(wordAt(lexemes, i + 1))) return null;
      return { taken: 2, given: [{ ...lexemes[i]!, kind: 'meant', ids: [id], end: lexemes[i + 1]!.end }] };
    },
  },
  {
    name: 'consonants between vowels, where words are divided',
    example: 'dividing words with two consonants in the middle',
    counterExample: 'words with two consonants at the end',
    applies: middleConsonants,
  },
];

/** Words between letters and their sound. At least one of them must say that the letters have the sound. */
const saying =
  /^(?:says?|said|saying|spells?|spelling|makes?|making|represent(?:s|ing)?|sounds?|sounding|gives?|giving|has|have|having|with|as|for|stands?|is|are|be|being|pronounced|heard)$/;
const between = /^(?:that|which|when|where|it|they|to|can|also|sometimes|used|like|on|the|a|its|their)$/;

/** The most words between letters and their sound. */
const MOST_BETWEEN = 5;

interface Said {
  readonly end: number;
  readonly within: ReadonlySet<PatternId>;
}

/** Returns the sound that is named at a place: `/k/`, "long e". Returns null if there is none. */
function soundNamed(lexemes: readonly Lexeme[], at: number): Said | null {
  const { kind, text } = lexemes[at] ?? { kind: 'break', text: '' };
  if (kind === 'sound') return { end: at + 1, within: soundPhrase(text).within ?? new Set() };
  if (kind !== 'word' || !/^(?:long|short)$/.test(text)) return null;
  const vowel = wordAt(lexemes, at + 1);
  const within = /^(?:[aeiou]|oo)$/.test(vowel) ? findPhrase([text, vowel])?.within : null;
  return within ? { end: at + 2, within } : null;
}

const isSoundWord = (lexemes: readonly Lexeme[], at: number) =>
  /^(?:sounds?|phonemes?)$/.test(wordAt(lexemes, at)) && lexemes[at + 1]?.kind !== 'sound';

function candidatesOf(lexeme: Lexeme | undefined): readonly PatternId[] {
  if (lexeme?.kind !== 'word') return [];
  return findSpelling(lexeme.text, lexeme.mark)?.candidates ?? [];
}

function lettersSay(lexemes: readonly Lexeme[], i: number): Notation | null {
  const letters = lexemes[i]!;
  const candidates = candidatesOf(letters);
  if (candidates.length === 0) return null;
  let at = i + 1;
  let said = false;
  while (at <= i + MOST_BETWEEN) {
    const text = wordAt(lexemes, at);
    if (saying.test(text)) said = true;
    else if (!between.test(text)) break;
    at += 1;
  }
  const sound = said ? soundNamed(lexemes, at) : null;
  if (sound === null || !candidates.some((id) => sound.within.has(id))) return null;
  const end = isSoundWord(lexemes, sound.end) ? sound.end + 1 : sound.end;
  const joint: Lexeme = { ...lexemes[i + 1]!, kind: 'hint', text: '' };
  return { taken: end - i, given: [letters, joint, ...lexemes.slice(at, sound.end)] };
}

/** Words that only introduce a sound and its letters: "other ways to spell the". */
const leading = /^(?:the|spellings?|spell|ways?|to|of|for|other|more|new|common|write|writing)$/;

function soundOfLetters(lexemes: readonly Lexeme[], i: number): Notation | null {
  if (lexemes[i - 1] !== undefined && !/^(?:break|open)$/.test(lexemes[i - 1]!.kind)) return null;
  let start = i;
  while (start < i + MOST_BETWEEN && leading.test(wordAt(lexemes, start))) start += 1;
  const sound = soundNamed(lexemes, start);
  if (sound === null) return null;
  let at = sound.end;
  const named = /^(?:sounds?|phonemes?)$/.test(wordAt(lexemes, at));
  if (named) at += 1;
  // "/n/: kn" and "/n/ spelled kn" need no rule.
  if (!named && start === i) return null;
  const joint = lexemes[at];
  if (joint?.kind === 'is' || /^(?:of|with|by|in|from|for|as|using)$/.test(wordAt(lexemes, at))) at += 1;
  else return null;
  if (!candidatesOf(lexemes[at]).some((id) => sound.within.has(id))) return null;
  const list: Lexeme = { ...joint!, kind: 'list', text: 'spelled' };
  const first = { ...lexemes[start]!, start: lexemes[i]!.start };
  return { taken: at - i, given: [first, ...lexemes.slice(start + 1, sound.end), list] };
}

/** Reads one split digraph for each vowel: "silent e with long a and long i", "VCe with a, o". */
function silentWith(lexemes: readonly Lexeme[], i: number): Notation | null {
  const named = [3, 2, 1].find((length) => {
    const words = Array.from({ length }, (_, n) => wordAt(lexemes, i + n)).join(' ');
    return /^(?:(?:silent|magic|final) e|vce|cvce|vowel consonant e|split digraphs?)$/.test(words);
  });
  if (named === undefined || !/^(?:with|for|after|making)$/.test(wordAt(lexemes, i + named))) return null;
  const vowels: string[] = [];
  let end = i + named + 1;
  for (let at = end; at < lexemes.length; at++) {
    if (/^(?:long|the|vowels?)$/.test(wordAt(lexemes, at)) || divides(lexemes[at])) continue;
    if (!/^[aeiou]$/.test(wordAt(lexemes, at)) || lexemes[at]!.mark !== 'none') break;
    vowels.push(wordAt(lexemes, at));
    end = at + 1;
  }
  const ends = lexemes[end] === undefined || /^(?:break|open|is|close)$/.test(lexemes[end]!.kind);
  if (vowels.length === 0 || !ends) return null;
  const ids = vowels.flatMap((vowel) => findSpelling(`${vowel}_e`, 'none')?.usual ?? []);
  return { taken: end - i, given: [{ ...lexemes[i]!, kind: 'meant', ids, end: lexemes[end - 1]!.end }] };
}

const startPlace = /^(?:initial|beginning|start|starting|onset)$/;
const endPlace = /^(?:final|ending|end)$/;

/**
 * Returns the blend that letters form at the named end of a word. Returns null unless the letters are blends at both
 * ends.
 */
function blendAt(lexeme: Lexeme | undefined, place: string): PatternId | null {
  const candidates = candidatesOf(lexeme);
  const ids = ['start', 'end'].map((side) => candidates.find((id) => id === `${side}-${lexeme!.text}`));
  if (ids[0] === undefined || ids[1] === undefined) return null;
  return startPlace.test(place) ? ids[0] : endPlace.test(place) ? ids[1] : null;
}

function placedBlend(lexemes: readonly Lexeme[], i: number): Notation | null {
  return placeBefore(lexemes, i) ?? placeInBrackets(lexemes, i) ?? placeSaid(lexemes, i);
}

/** Reads a place before letters: "initial st". A list of letters may follow: "initial st, sp". */
function placeBefore(lexemes: readonly Lexeme[], i: number): Notation | null {
  const list: Lexeme[] = [];
  let end = i;
  for (let at = i + 1; at < lexemes.length; at++) {
    const id = blendAt(lexemes[at], wordAt(lexemes, i));
    if (id !== null) {
      list.push(...lexemes.slice(end + 1, at), { ...lexemes[at]!, kind: 'meant', ids: [id] });
      end = at;
    } else if (!divides(lexemes[at]) || list.length === 0) break;
  }
  if (list.length === 0 || !/^(?:|blends?|clusters?|words?)$/.test(wordAt(lexemes, end + 1))) return null;
  return { taken: end + 1 - i, given: [{ ...list[0]!, start: lexemes[i]!.start }, ...list.slice(1)] };
}

/** "st (final)", "st, final" */
function placeInBrackets(lexemes: readonly Lexeme[], i: number): Notation | null {
  const opens = lexemes[i + 1]?.kind === 'open';
  if (!opens && lexemes[i + 1]?.text !== ',') return null;
  const id = blendAt(lexemes[i], wordAt(lexemes, i + 2));
  const after = lexemes[i + 3];
  const closes = opens ? after?.kind === 'close' : after === undefined || after.kind === 'break';
  return id !== null && closes ? blendMeant(lexemes, i, id, opens ? 4 : 3) : null;
}

/** Reads a place after letters: "st at the end of a word". */
function placeSaid(lexemes: readonly Lexeme[], i: number): Notation | null {
  if (!/^(?:at|in|on)$/.test(wordAt(lexemes, i + 1))) return null;
  const at = wordAt(lexemes, i + 2) === 'the' ? i + 3 : i + 2;
  const id = blendAt(lexemes[i], wordAt(lexemes, at));
  return id === null ? null : blendMeant(lexemes, i, id, at + 1 - i);
}

function blendMeant(lexemes: readonly Lexeme[], i: number, id: PatternId, taken: number): Notation {
  return {
    taken,
    given: [{ ...lexemes[i]!, kind: 'meant', ids: [id], end: lexemes[i + taken - 1]!.end }],
  };
}

function affixNamedBehind(lexemes: readonly Lexeme[], i: number): Notation | null {
  const { mark } = lexemes[i]!;
  if (mark === 'none' || divides(lexemes[i - 1])) return null;
  let at = i + 1;
  if (wordAt(lexemes, at) === 'as') at += /^(?:a|an|the)$/.test(wordAt(lexemes, at + 1)) ? 2 : 1;
  const name = wordAt(lexemes, at);
  if (!new RegExp(`^${mark}$`).test(name)) return null;
  const spelling = findSpelling(lexemes[i]!.text, mark, true);
  if (spelling?.candidates.some((id) => id.startsWith(`${mark}-`)) !== true) return null;
  return { taken: at + 1 - i, given: [inPlace(lexemes[i]!, name), lexemes[i]!] };
}

const secondWords: ReadonlyMap<string, PatternId> = new Map([
  ['not', 'contraction-not'],
  ['will', 'contraction-will'],
  ['is', 'contraction-is'],
  ['are', 'contraction-are'],
  ['have', 'contraction-have'],
  ['would', 'contraction-would'],
]);

function middleConsonants(lexemes: readonly Lexeme[], i: number): Notation | null {
  let at = i;
  if (/^(?:divid(?:e|es|ing)|split(?:s|ting)?|division)$/.test(wordAt(lexemes, at))) {
    while (
      /^(?:divid(?:e|es|ing)|split(?:s|ting)?|division|of|the|long|longer|words?|with|that|have)$/.test(
        wordAt(lexemes, at),
      )
    )
      at += 1;
  }
  if (!/^(?:two|2|three|3)$/.test(wordAt(lexemes, at)) || !/^consonants?$/.test(wordAt(lexemes, at + 1)))
    return null;
  const words = lexemes
    .slice(at + 2, at + 8)
    .map(({ text }) => text)
    .join(' ');
  const place = /^(?:in the middle|between (?:the |two |2 )*vowels)(?: of (?:a |the )?words?)?/.exec(
    words,
  )?.[0];
  if (place === undefined) return null;
  const taken = at + 2 - i + place.split(' ').length;
  return {
    taken,
    given: [{ ...lexemes[i]!, kind: 'meant', ids: ['divide-vc-cv'], end: lexemes[i + taken - 1]!.end }],
  };
}
