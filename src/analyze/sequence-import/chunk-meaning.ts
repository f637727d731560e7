import type { PatternId } from '../types.ts';
import type { Chunk } from './clause-chunk.ts';
import type { Phrase } from './phrases.ts';
import type { Settled } from './settle-spelling.ts';
import type { WordNeeds } from './word-needs.ts';

/** The patterns that a chunk of a clause teaches. `confirmed` says that its examples agree with them. */
export interface Meaning {
  readonly ids: readonly PatternId[];
  readonly sure: boolean;
  readonly confirmed: boolean;
}

/** Returns the patterns of a chunk with letters: the patterns of its letters, and the patterns that its headings keep beside letters. */
export function ofLetters({ phrases }: Chunk, settled: readonly Settled[]): Meaning {
  return {
    ids: [...phrases.flatMap(({ keeps }) => keeps), ...settled.flatMap(({ ids }) => ids)],
    sure: settled.every((one) => one.sure),
    confirmed: settled.every((one) => one.confirmed),
  };
}

/** The most patterns that a few examples can confirm. */
const MOST_CONFIRMED = 8;

/** Returns the possible patterns that example words need. "CVC words (map, sit)" are about their vowels. */
function shownOf(
  possible: readonly PatternId[],
  ids: readonly PatternId[],
  known: readonly ReadonlySet<PatternId>[],
): readonly PatternId[] {
  const needed = possible.filter((id) => known.some((needs) => needs.has(id)));
  const vowels = ids.length > 0 && ids.every((id) => id.startsWith('short-'));
  return vowels ? needed.filter((id) => !/^(?:[b-df-hj-np-tv-z]|qu)$/.test(id)) : needed;
}

/** Returns the patterns that headings without letters teach, limited to those on which the example words agree. */
export function ofPhrases({ phrases, examples }: Chunk, needsOf: WordNeeds): Meaning {
  const ids = idsOf(phrases);
  // Two headings together may leave one meaning: "long a silent e".
  const sure = phrases.every((phrase) => phrase.sure) || (phrases.length > 1 && ids.length === 1);
  // A word divided in the examples confirms nothing: win/dow.
  if (ids.length > 0 && ids.every((id) => id.startsWith('divide-'))) return { ids, sure, confirmed: false };
  const said = ids.includes('contraction') ? examples.filter((word) => word.includes("'")) : examples;
  const known = said.map(needsOf).filter((needs) => needs.size > 0);
  if (known.length === 0) return { ids, sure, confirmed: false };
  const possible = new Set([...ids, ...phrases.flatMap(({ within }) => [...(within ?? [])])]);
  const needed = shownOf([...possible], ids, known);
  // The examples show something other than the heading: "irregular plurals (men, feet)".
  if (needed.length === 0 && known.length > 1) return { ids: [], sure: false, confirmed: false };
  // Only the vowels that are shown are meant: "open: go, me, hi".
  const short = said.length > 1 && said.every((word) => /^[^aeiouy]{0,3}[aeiouy]$/.test(word));
  if (short && ids.includes('type-open'))
    return { ids: ids.filter((id) => id === 'type-open' || needed.includes(id)), sure, confirmed: true };
  const all = known.every((needs) => [...possible].some((id) => needs.has(id)));
  // The words show which spellings are meant: "The three spellings of /er/: her, first, nurse".
  if (
    phrases.length === 1 &&
    phrases[0]!.sound === true &&
    known.length > 1 &&
    needed.some((id) => !ids.includes(id))
  )
    return { ids: needed, sure: false, confirmed: false };
  // Of two sounds with the same spelling, the one in the example is meant: "th sound as in moth".
  const shown = ids.filter((id) => needed.includes(id));
  if (
    sure &&
    phrases.length === 1 &&
    phrases[0]!.sound === true &&
    shown.length > 0 &&
    shown.length < ids.length
  )
    return { ids: shown, sure: all, confirmed: all };
  // Words with some of twenty consonants do not confirm them all.
  if (sure) return { ids, sure: all, confirmed: all && ids.length <= MOST_CONFIRMED };
  // If many blends are possible, a few words are only examples. If there are two meanings, the words decide between
  // them.
  const choose = needed.length > 0 && (ids.length <= 6 || !needed.some((id) => ids.includes(id)));
  return { ids: choose ? needed : ids, sure: false, confirmed: false };
}

/**
 * Returns the patterns that headings without letters teach. Headings side by side teach the patterns they share: "long
 * a silent e" is a_e.
 */
function idsOf(phrases: readonly Phrase[]): readonly string[] {
  return phrases.reduce<readonly string[]>((ids, phrase, i) => {
    const before = phrases[i - 1];
    if (before === undefined) return phrase.ids;
    // The narrower heading counts: "Blends: l-blends".
    const narrower = phrase.sure && phrase.ids.length > 0 && phrase.ids.length < ids.length;
    if (narrower && phrase.ids.every((id) => ids.includes(id)))
      return [...new Set([...before.keeps, ...phrase.keeps, ...phrase.ids])];
    const kept = ids.filter((id) => phrase.within?.has(id));
    const left = kept.length > 0 ? kept : phrase.ids.filter((id) => before.within?.has(id));
    // "y as a vowel: short i" leaves one meaning that neither heading has alone.
    const shared = [...(phrase.within ?? [])].filter((id) => before.within?.has(id));
    const meant = left.length > 0 || shared.length > 2 ? left : shared;
    return [...new Set([...before.keeps, ...phrase.keeps, ...meant])];
  }, []);
}
