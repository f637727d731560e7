import { rememberFor } from '../../analyze/index.ts';
import type { PatternId, Reading } from '../../analyze/types.ts';
import { inVariety } from '../../variety/index.ts';
import type { KnownWord, KnownWords } from '../known-words.ts';
import type { LessonInput } from '../lesson-input.ts';
import { isPlain } from '../plain-words.ts';
import type { WordBank } from '../word-bank.ts';
import { listUnits } from './list-units.ts';

/** Short forms pupils meet first, commonest first (from memory). */
export const shortForms: readonly string[] = (
  "it's don't I'm that's you're can't I'll didn't he's we're let's I've there's what's isn't she's they're won't " +
  "we'll you'll doesn't wasn't couldn't haven't wouldn't you've aren't hasn't who's we've she'll he'll they'll I'd " +
  "shouldn't weren't hadn't they've you'd where's"
).split(' ');

/** Owners that are often named in stories for children: our own list. */
const owners: readonly string[] = (
  "man's dad's mum's dog's cat's king's hen's pig's fox's ship's boat's queen's boy's girl's sister's brother's " +
  "baby's teacher's farmer's sailor's captain's crab's gull's town's"
).split(' ');

/** A word fit for a list. Its usual reading follows its patterns, and no other word is spelt alike. */
export interface ListedWord {
  readonly word: string;
  /** Position in the list. */
  readonly order: number;
  readonly reading: Reading;
  readonly requires: readonly PatternId[];
  /** The units of the word (`listUnits`). */
  readonly units: readonly string[];
  readonly syllables: number;
  readonly pronunciation: string;
  /** The word itself, or the word it is made from; a list has one word of a family. */
  readonly family: string;
  /** Whether the word has an ending or a beginning, or is two words. */
  readonly built: boolean;
  /** Whether children of the primary grades know the word (`isPlain`). */
  readonly plain: boolean;
}

/** A form of another word (needs) is placed like a word that is this many times rarer. */
const FORM_RARER = 3;

/**
 * Returns the words fit for a list, the commonest first. Forms of other words come later, and short forms and
 * possessives come last. The result is kept for each `known`.
 */
export const listWords = rememberFor(findListed, ({ known }: LessonInput) => known);

function findListed(input: LessonInput): readonly ListedWord[] {
  const ranked = input.known.words
    .filter((each) => isExample(each, input.known))
    .map((each) => ({ each, rank: each.rank * (each.reading.base === null ? 1 : FORM_RARER) }))
    .sort((a, b) => a.rank - b.rank);
  return [...ranked.map(({ each }) => each), ...withApostrophe(input)].map((each, order) =>
    toListed(each, order, input.bank),
  );
}

/**
 * Excludes words learnt as a whole (said), homographs (lead, bow), and words that the group can read only as some
 * people pronounce them.
 */
function isExample({ word, standing, homograph, reading }: KnownWord, known: KnownWords): boolean {
  return (
    word.length > 1 &&
    standing !== 'by-sight' &&
    !homograph &&
    reading.requires.every((id) => known.knows(id))
  );
}

/** Adds words with an apostrophe, because the bank has none. */
function withApostrophe({ analyzer, judge, known }: LessonInput): Pick<KnownWord, 'word' | 'reading'>[] {
  return [...shortForms, ...owners].flatMap((written) => {
    const word = inVariety(written, known.accent);
    const reading = analyzer.analyze(word).readings[0]!;
    const isReadable = reading.requires.every((id) => known.knows(id)) && known.reads(word);
    return isReadable && judge(word).standing !== 'by-sight' ? [{ word, reading }] : [];
  });
}

function toListed(
  { word, reading }: Pick<KnownWord, 'word' | 'reading'>,
  order: number,
  bank: WordBank,
): ListedWord {
  const { requires, syllables, pronunciation, base, affixes } = reading;
  return {
    word,
    order,
    reading,
    requires,
    units: listUnits(reading),
    // The vowel left out at the apostrophe of didn't is still heard.
    syllables: word.endsWith("n't") ? (pronunciation.match(/[AEIOU][A-Z]/g) ?? []).length : syllables.length,
    pronunciation,
    family: base ?? word,
    built: affixes.length > 0,
    plain: isPlain(word, base, bank),
  };
}
