import type { PatternId, Reading } from '../../analyze/types.ts';
import { inVariety } from '../../variety/index.ts';
import type { KnownWord, KnownWords } from '../known-words.ts';
import type { LessonInput } from '../lesson-input.ts';
import { isPlain } from '../plain-words.ts';
import type { WordBank } from '../word-bank.ts';
import { owners, shortForms } from './apostrophes.ts';
import { listUnits } from './list-units.ts';

/** A word that may be in a list: read by its patterns in its usual reading, and no other word spelt alike. */
export interface ListedWord {
  readonly word: string;
  /** Place in the list. */
  readonly order: number;
  readonly reading: Reading;
  readonly requires: readonly PatternId[];
  /** What it is made of (`listUnits`). */
  readonly units: readonly string[];
  readonly syllables: number;
  readonly pronunciation: string;
  /** It or the word it is made from; a list has one word of a family. */
  readonly family: string;
  /** It has an ending or a beginning, or is two words. */
  readonly built: boolean;
  /** Children of the primary grades know it (`isPlain`). */
  readonly plain: boolean;
}

const lists = new WeakMap<KnownWords, readonly ListedWord[]>();

/** A form of another word (needs) comes as late as a word this many times rarer. */
const FORM_RARER = 3;

/**
 * The words fit for a list, commonest first, forms of other words later than these, short forms and owners last. Kept for
 * each `known`.
 */
export function listWords(input: LessonInput): readonly ListedWord[] {
  const before = lists.get(input.known);
  if (before) return before;
  const ranked = input.known.words
    .filter((each) => isExample(each, input.known))
    .map((each) => ({ each, rank: each.rank * (each.reading.base === null ? 1 : FORM_RARER) }))
    .sort((a, b) => a.rank - b.rank);
  const listed = [...ranked.map(({ each }) => each), ...withApostrophe(input)].map((each, order) =>
    toListed(each, order, input.bank),
  );
  lists.set(input.known, listed);
  return listed;
}

/** Not words learnt as a whole (said), not lead or bow, not words only some people say as the group can read. */
function isExample({ word, standing, homograph, reading }: KnownWord, known: KnownWords): boolean {
  return (
    word.length > 1 &&
    standing !== 'by-sight' &&
    !homograph &&
    reading.requires.every((id) => known.knows(id))
  );
}

/** The bank has no words with an apostrophe. */
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
    // The vowel left out at the apostrophe of didn't is heard still.
    syllables: word.endsWith("n't") ? (pronunciation.match(/[AEIOU][A-Z]/g) ?? []).length : syllables.length,
    pronunciation,
    family: base ?? word,
    built: affixes.length > 0,
    plain: isPlain(word, base, bank),
  };
}
