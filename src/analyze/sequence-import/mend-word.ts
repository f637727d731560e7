import { headingPhrases } from './heading-phrases.ts';
import { plainPhrases } from './plain-phrases.ts';

/** Words that teachers shorten, with the full word. */
const shortened: Readonly<Record<string, string>> = {
  shrt: 'short',
  lng: 'long',
  sfx: 'suffix',
  pfx: 'prefix',
  dbl: 'double',
  ltr: 'letter',
  ltrs: 'letters',
  snd: 'sound',
  snds: 'sounds',
  vow: 'vowel',
  cons: 'consonant',
  syll: 'syllable',
  syl: 'syllable',
  syls: 'syllables',
  digr: 'digraph',
  contr: 'controlled',
  incl: 'and',
  init: 'initial',
  fin: 'final',
  dig: 'digraph',
  digs: 'digraphs',
  suff: 'suffix',
  pref: 'prefix',
  poss: 'possessive',
  cpd: 'compound',
  cmpd: 'compound',
  sft: 'soft',
  hrd: 'hard',
  wds: 'words',
  wd: 'word',
  vwl: 'vowel',
  vwls: 'vowels',
  blnd: 'blend',
  blnds: 'blends',
  betw: 'between',
};

/**
 * The fewest letters of a technical word that a mistyped word can mean. Shorter words are too similar to many other
 * words.
 */
const SHORTEST = 5;

/** Technical words, each with its plural. */
const trade = new Set(
  [
    ...headingPhrases.map(([names]) => names),
    ...Object.keys(plainPhrases),
    'initial|beginning|review|assessment|revision|holiday|screening',
  ]
    .flatMap((names) => names.split(/[ |]/))
    .filter((word) => word.length >= SHORTEST && /^[a-z]*[aeiou][a-z]*$/.test(word))
    .flatMap((word) => (word.endsWith('ed') ? [word] : [word, `${word}s`])),
);
const beginnings = new Map<string, string[]>();
for (const word of trade) beginnings.set(word[0]!, [...(beginnings.get(word[0]!) ?? []), word]);

/**
 * Returns the technical word that a shortened or mistyped word means. For example, vowls means vowels, digrahps means
 * digraphs and sfx means suffix. Any other word is returned unchanged (towels, blinds). One letter may be missing,
 * doubled or misplaced. The first letter must be right.
 */
export function mendWord(word: string): string {
  const short = Object.hasOwn(shortened, word) ? shortened[word] : undefined;
  if (short !== undefined) return short;
  if (word.length < SHORTEST - 1 || trade.has(word)) return word;
  return beginnings.get(word[0]!)?.find((one) => one.length >= SHORTEST && isSlip(word, one)) ?? word;
}

/** Whether teachers use a word as a short form: init, cons. */
export function isShortened(word: string): boolean {
  return Object.hasOwn(shortened, word.toLowerCase());
}

/** Whether one of several words joined by hyphens is a technical word: vowel-team, not nap-kin. */
export function isTrade(words: readonly string[]): boolean {
  return words.some((word) => trade.has(word));
}

/** Whether a typed word differs by one missing letter, one doubled letter, or two neighbouring letters swapped. */
function isSlip(typed: string, meant: string): boolean {
  let at = 0;
  while (at < typed.length && typed[at] === meant[at]) at += 1;
  const [rest, own] = [typed.slice(at), meant.slice(at)];
  if (typed.length === meant.length - 1) return rest === own.slice(1);
  if (typed.length === meant.length + 1) return rest.slice(1) === own && typed[at] === typed[at - 1];
  return (
    typed.length === meant.length &&
    rest[0] === own[1] &&
    rest[1] === own[0] &&
    rest.slice(2) === own.slice(2)
  );
}
