import type { Derivation } from './derivation.ts';
import { mentions } from './evidence.ts';
import type { Candidate } from './find-suffix.ts';
import { type Facts, isLemma, looksLikeName, rankOf } from './lexical-facts.ts';
import { keepsFullVowels, type Sounds } from './match-sound.ts';

/** Words WordNet has no entry for and that do make compounds (himself, whatever, within). */
const CLOSED_CLASS = new Set(
  `after any body down ever every for her him how in it my no off on one our over own out self selves so some
  there thing through time to under up what when where who with your them thy`.split(/\s+/),
);
/** Short first parts; any other has three letters or more. */
const SHORT_PARTS = new Set(['up', 'in', 'on', 'by', 'no', 'my', 'it', 'go', 'ox', 'be', 'so', 'to']);

/** Second parts often said weakly: postman, nothing. */
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

/** How common both parts must be when the definition names neither: the commonest 12,000 words. */
const COMMON = 12_000;

/**
 * Every pair of words `word` may be made of: pan + cake; not car + pet, whose e is weak in carpet.
 * `stresses` counts the stressed vowels of one pronunciation.
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
    if (!isPart(base, facts, found) || !isPart(affix, facts, found)) continue;
    const fit = bestReading(word, base, affix, words);
    if (!fit || !plausible(word, base, affix, stresses(word, fit.wordReading), facts)) continue;
    const named = mentions(word, base, facts) || mentions(word, affix, facts);
    const rarer = Math.max(rankOf(base, facts), rankOf(affix, facts));
    candidates.push({
      derivation: { base, affix, kind: 'compound', change: 'none', ...fit },
      score: 60 + (named ? 10 : 0) - rarer / 10_000,
    });
  }
  return candidates;
}

function isPart(part: string, facts: Facts, found: ReadonlyMap<string, Derivation>): boolean {
  if (part.length < 3) return SHORT_PARTS.has(part);
  return (
    isLemma(part, facts) || CLOSED_CLASS.has(part) || found.get(part)?.kind === 'suffix' || part === 'men'
  );
}

function plausible(word: string, base: string, affix: string, stresses: number, facts: Facts): boolean {
  const rarer = Math.max(rankOf(base, facts), rankOf(affix, facts));
  if (CLOSED_CLASS.has(base) && CLOSED_CLASS.has(affix)) return true;
  if (mentions(word, base, facts) || mentions(word, affix, facts)) return rarer < 50_000;
  // Not named in the definition: both halves must be common and both must carry stress (sunset, not console).
  const heard = stresses > 1 || affix in WEAK_FORMS;
  return heard && rarer < (base.length < 3 || affix.length < 3 ? 1_500 : COMMON);
}

function bestReading(
  word: string,
  base: string,
  affix: string,
  words: ReadonlyMap<string, readonly Sounds[]>,
) {
  const second = WEAK_FORMS[affix] ?? words.get(affix) ?? [];
  for (const [w, sounds] of words.get(word)!.entries()) {
    for (const [b, first] of (words.get(base) ?? []).entries()) {
      for (const last of second) {
        if (joins(first, last).some((joined) => keepsFullVowels(joined, sounds)))
          return { wordReading: w, baseReading: b };
      }
    }
  }
  return null;
}

/** Said in full, or a repeated sound once (bookcase), or t or d lost between consonants (grandfather, postman). */
function joins(first: Sounds, last: Sounds): Sounds[] {
  const forms: Sounds[] = [[...first, ...last]];
  const end = first.at(-1);
  if (end === last[0] || ((end === 'T' || end === 'D') && first.length > 2))
    forms.push([...first.slice(0, -1), ...last]);
  return forms;
}
