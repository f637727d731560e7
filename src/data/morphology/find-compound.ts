import { PREFIXES } from '../../analyze/morphology/affixes.ts';
import { readWordList } from '../read-word-list.ts';
import type { Derivation } from './derivation.ts';
import { mentions } from './evidence.ts';
import type { Candidate } from './find-suffix.ts';
import { type Facts, isLemma, looksLikeName, rankOf } from './lexical-facts.ts';
import { joinSounds, keepsFullVowels, type Sounds, sameSounds } from './match-sound.ts';

/** Words without a WordNet entry that still form compounds (himself, whatever, within). */
const CLOSED_CLASS = readWordList('compound-parts.txt');
/** Short first parts. Any other first part has three or more letters. */
const SHORT_PARTS = readWordList('short-compound-parts.txt');

/** Second parts that often have a weak pronunciation: postman, nothing. */
const WEAK_FORMS: Record<string, Sounds[]> = {
  man: [
    ['M', 'W', 'N'],
    ['M', 'AE', 'N'],
  ],
  men: [
    ['M', 'W', 'N'],
    ['M', 'EH', 'N'],
  ],
  thing: [['TH', 'W', 'NG']],
  day: [
    ['D', 'IY'],
    ['D', 'EY'],
  ],
};

/** The highest rank of both parts if the definition names neither. */
const COMMON = 15_000;
/** The highest rank of both parts if the second part is also unstressed. */
const VERY_COMMON = 4_000;

/**
 * Returns every pair of words that may form `word`: pan + cake; not car + pet, whose e is weak in carpet. A first half
 * that is also a prefix counts as a prefix: super + hero. `stresses` counts the stressed vowels of one pronunciation.
 */
export function findCompounds(
  word: string,
  words: ReadonlyMap<string, readonly Sounds[]>,
  stresses: (word: string, reading: number) => number,
  facts: Facts,
  found: ReadonlyMap<string, Derivation>,
): Candidate[] {
  const candidates: Candidate[] = [];
  if (word.length < 5 || looksLikeName(word, facts)) return candidates;
  for (let cut = 2; cut <= word.length - 2; cut++) {
    const [base, affix] = [word.slice(0, cut), word.slice(cut)];
    if (
      NO_HALVES.has(base) ||
      ENDINGS.has(affix) ||
      !isPart(base, facts, found) ||
      !isPart(affix, facts, found)
    )
      continue;
    const fit = bestReading(word, base, affix, words, facts);
    if (!fit || !plausible(word, base, affix, stresses(word, fit.wordReading), facts, found)) continue;
    const named = mentions(word, base, facts) || mentions(word, affix, facts);
    const rarer = Math.max(rankOfPart(base, facts, found), rankOfPart(affix, facts, found));
    candidates.push({
      derivation: PREFIX_WORDS.has(base)
        ? {
            base: affix,
            affix: base,
            kind: 'prefix',
            change: 'none',
            wordReading: fit.wordReading,
            baseReading: -1,
          }
        : { base, affix, kind: 'compound', change: 'none', ...fit },
      score: 60 + (named ? 10 : 0) - rarer / 10_000,
    });
  }
  return candidates;
}

/** Words that are never halves of longer words: profile, control, represent. */
const NO_HALVES = new Set(['pro', 'con', 'rep']);
/** Second halves that are endings: awesome, ladylike. The ship of warship is a real half. */
const ENDINGS = new Set(['some', 'like', 'wise', 'ward', 'wards', 'hood', 'less']);
/** Prefixes that are also words. over, under, out and up are not included, since they form compounds (outdoors, uphill). */
const PREFIX_WORDS = new Set(
  PREFIXES.map(({ text }) => text).filter((text) => !/^(over|under|out|up|in)$/.test(text)),
);

function isPart(part: string, facts: Facts, found: ReadonlyMap<string, Derivation>): boolean {
  if (part.length < 3) return SHORT_PARTS.has(part);
  return (
    isLemma(part, facts) || CLOSED_CLASS.has(part) || found.get(part)?.kind === 'suffix' || part === 'men'
  );
}

/** Returns the rank of a part or of its base form, whichever is commoner: the spokes of spokesman counts as spoke. */
function rankOfPart(part: string, facts: Facts, found: ReadonlyMap<string, Derivation>): number {
  const made = found.get(part);
  const plural = rankOf(`${part}s`, facts);
  const own = Math.min(rankOf(part, facts), plural);
  return made?.kind === 'suffix' ? Math.min(own, rankOf(made.base, facts)) : own;
}

function plausible(
  word: string,
  base: string,
  affix: string,
  stresses: number,
  facts: Facts,
  found: ReadonlyMap<string, Derivation>,
): boolean {
  const rarer = Math.max(rankOfPart(base, facts, found), rankOfPart(affix, facts, found));
  if (CLOSED_CLASS.has(base) && CLOSED_CLASS.has(affix)) return true;
  if (mentions(word, base, facts) || mentions(word, affix, facts)) return rarer < 50_000;
  // If the definition names no part, both halves must be common. In addition, both must have a stress (sunset, not
  // console), or both must be long and very common (cellphone).
  if (base.length > 3 && affix.length > 3 && rarer < VERY_COMMON) return true;
  const heard = stresses > 1 || affix in WEAK_FORMS;
  return heard && rarer < (base.length < 3 || affix.length < 3 ? 1_500 : COMMON);
}

function bestReading(
  word: string,
  base: string,
  affix: string,
  words: ReadonlyMap<string, readonly Sounds[]>,
  facts: Facts,
) {
  const second = WEAK_FORMS[affix] ?? words.get(affix) ?? [];
  // A vowel may be weak if the definition names the part: babysit, toothbrush.
  const named = mentions(word, affix, facts) || (mentions(word, base, facts) && affix.length > 3);
  for (const [w, sounds] of words.get(word)!.entries()) {
    for (const [b, first] of (words.get(base) ?? []).entries()) {
      for (const last of second) {
        const ways = joins(first, last);
        if (ways.some((joined) => keepsFullVowels(joined, sounds))) return { wordReading: w, baseReading: b };
        if (named && ways.some((joined) => sameSounds(joined, sounds)))
          return { wordReading: w, baseReading: b };
      }
    }
  }
  return null;
}

/**
 * Returns the ways to pronounce two parts together: in full, with a repeated sound once (bookcase), or without a t or d
 * between consonants (grandfather, postman).
 */
function joins(first: Sounds, last: Sounds): Sounds[] {
  const forms = [joinSounds(first, last)];
  const end = first.at(-1);
  if (end === last[0] || ((end === 'T' || end === 'D') && first.length > 2))
    forms.push(joinSounds(first.slice(0, -1), last));
  return forms;
}
