import { catalogue } from '../catalogue/catalogue.ts';
import type { PatternId } from '../types.ts';
import type { Chunk, Spelled } from './clause-chunk.ts';
import type { ReadItem } from './settle-items.ts';
import type { Settled } from './settle-spelling.ts';
import { soundPhrase } from './sound-phrase.ts';
import { findSpelling } from './spellings.ts';
import type { Lexeme } from './split-lexemes.ts';
import { isWord } from './words-or-letters.ts';

/** The result of reading a clause: an item for each chunk, and the patterns chosen for its letters. */
export interface ClauseReading {
  readonly items: readonly ReadItem[];
  readonly chunks: readonly Chunk[];
  readonly settled: readonly { readonly spelled: Spelled; readonly ids: Settled['ids'] }[];
  /** The lexemes of the clause. Several lexemes with one meaning are already merged into one. */
  readonly lexemes: readonly Lexeme[];
  /** Words that were not used or were taken for examples. */
  readonly passed: readonly Lexeme[];
}

/**
 * A sign that a clause means something else than was read. The sign is in the content of the clause, not in the way it
 * was read. Either two parts of the clause do not fit together, or an unused word may change the rest.
 */
interface Doubt {
  readonly name: string;
  /** A clause in which an item becomes a guess. `counterExample` is a similar clause that stays sure. */
  readonly example: string;
  readonly counterExample: string;
  /** Returns the indexes of the items that become guesses. */
  readonly doubted: (reading: ClauseReading) => readonly number[];
}

/** A name with this many patterns or fewer says by itself what is taught. */
const FEW = 2;

const rowOf = new Map(catalogue.map((row) => [row.id, row]));

const all = ({ items }: ClauseReading) => items.map((_, i) => i);

/** Returns the index of the item that contains the letters. */
const placeOf = (chunks: readonly Chunk[], spelled: Spelled) =>
  chunks.findIndex((chunk) => chunk.spelled.includes(spelled));

const isSuffix = (id: PatternId) => id.startsWith('suffix-');

/** Whether one row includes the other: contractions include the contractions with not. */
const takesIn = (one: PatternId, other: PatternId) => rowOf.get(other)?.kindOf === one;

/** Whether nothing beside the letters tells which of their meanings applies. */
const isBare = ({ headings, sounds, examples }: Spelled) =>
  headings.length + sounds.length + examples.length === 0;

/** Returns a member that all sets share. Returns nothing if there are no sets. */
function shared<Thing>(sets: readonly ReadonlySet<Thing>[]): Thing | undefined {
  const [first, ...others] = sets;
  return [...(first ?? [])].find((one) => others.every((other) => other.has(one)));
}

/** The order is irrelevant, because every doubt is checked. */
export const doubts: readonly Doubt[] = [
  {
    name: 'a whole family beside one of it',
    example: 'short vowels, short a',
    counterExample: 'short a, short e',
    doubted: ({ items }) =>
      items.flatMap(({ patterns }, i) => {
        const own = new Set(patterns);
        const holds = ({ patterns: beside }: ReadItem) =>
          beside.length > 0 &&
          ((beside.length < own.size && beside.every((id) => own.has(id))) ||
            beside.some((id) => patterns.some((one) => takesIn(one, id))));
        return items.some((other, at) => at !== i && holds(other)) ? [i] : [];
      }),
  },
  {
    name: 'a sound that nothing taught has',
    example: 'ai as /z/ and /ā/, sh',
    counterExample: 'ai as /ā/, sh',
    doubted: (reading) => {
      const said = reading.lexemes
        .filter(({ kind }) => kind === 'sound')
        .map(({ text }) => soundPhrase(text).within!);
      const taught = reading.items.flatMap(({ patterns }) => patterns);
      // The sounds of an ending belong to other rows: "-s /z/".
      if (taught.length === 0 || taught.some(isSuffix)) return [];
      return said.some((within) => within.size > 0 && !taught.some((id) => within.has(id)))
        ? all(reading)
        : [];
    },
  },
  {
    name: 'a pattern with none of the sounds that were said',
    example: 'er, ir, ur (plus wor = /wer/)',
    counterExample: 'er, ir, ur (/er/)',
    doubted: ({ chunks, settled }) =>
      settled.flatMap(({ spelled, ids }) => {
        const said = [...spelled.headings, ...spelled.sounds].filter(({ sound }) => sound === true);
        const heard = (id: PatternId) => isSuffix(id) || said.some(({ within }) => within!.has(id));
        return said.length === 0 || ids.every(heard) ? [] : [placeOf(chunks, spelled)];
      }),
  },
  {
    name: 'letters that a name beside them does not take in',
    example: 'c as in crab - open syllables',
    counterExample: 'c as in crab - consonants',
    doubted: ({ chunks, settled }) =>
      settled.flatMap(({ spelled, ids }) => {
        const named = [...spelled.headings, ...spelled.sounds].filter(
          ({ sound, within }) => sound !== true && (within?.size ?? 0) > 0,
        );
        const apart = named.some(({ within }) => !ids.some((id) => within!.has(id)));
        return ids.length > 0 && apart ? [placeOf(chunks, spelled)] : [];
      }),
  },
  {
    name: 'a name that says what is taught, beside letters that are something else',
    example: 'soft c and soft g - dge',
    counterExample: 'soft c and soft g - ce, ge',
    doubted: ({ chunks, items }) => {
      const taught = new Set(items.flatMap(({ patterns }) => patterns));
      const isLost = ({ phrases, spelled }: Chunk, patterns: readonly PatternId[]) =>
        spelled.length > 0 &&
        phrases.some(
          ({ sure, sound, ids, within }) =>
            sure &&
            sound !== true &&
            within !== null &&
            ids.length > 0 &&
            ids.length <= FEW &&
            !ids.some((id) => taught.has(id)) &&
            // "short e spelled ea" is one of the spellings of a single sound.
            (ids.length > 1 || !patterns.some((id) => within.has(id))),
        );
      return chunks.flatMap((chunk, i) => (isLost(chunk, items[i]!.patterns) ? [i] : []));
    },
  },
  {
    name: 'letters of another family than the list around them',
    example: 'er, est, ful, ness (suffixes)',
    counterExample: 'p, i, n',
    doubted: ({ settled, chunks }) => {
      const families = settled.map(({ ids }) => new Set(ids.map((id) => rowOf.get(id)!.family)));
      return settled.flatMap(({ spelled }, i) => {
        const near = families.slice(Math.max(0, i - 3), i + 4).filter((one) => one !== families[i]);
        const family = near.length < 2 ? undefined : shared(near);
        const { letters, candidates } = spelled.spelling;
        const vowel = family === 'consonant' && /^[aeiou]/.test(letters);
        if (family === undefined || vowel || !isBare(spelled) || families[i]!.has(family)) return [];
        return candidates.some((id) => rowOf.get(id)!.family === family) ? [placeOf(chunks, spelled)] : [];
      });
    },
  },
  {
    name: 'patterns of two sounds in a list of one',
    example: 'ee, ea, final y',
    counterExample: 'ee, ea, y as long e',
    doubted: ({ items }) => {
      const lists = items.flatMap(({ patterns }, i) => (isSpelling(patterns) ? [i] : []));
      const soundsOf = (i: number) => new Set(items[i]!.patterns.flatMap((id) => rowOf.get(id)!.sounds));
      if (lists.length < 3) return [];
      return lists.filter((i) => {
        const sound = shared(lists.filter((at) => at !== i).map(soundsOf));
        const has = (id: PatternId) => rowOf.get(id)!.sounds.includes(sound!);
        const { patterns } = items[i]!;
        return sound !== undefined && patterns.some(has) && !patterns.every(has);
      });
    },
  },
  {
    name: 'a letter that all the longer letters beside it have',
    example: 'r, shr, thr',
    counterExample: 'r, shr, th',
    doubted: ({ settled, chunks }) => {
      const longer = settled.filter(({ spelled }) => spelled.spelling.letters.length > 1);
      if (longer.length < 2 || longer.length + 1 !== settled.length) return [];
      return settled.flatMap(({ spelled }) => {
        const { letters } = spelled.spelling;
        const within = longer.every((other) => other.spelled.spelling.letters.includes(letters));
        return letters.length === 1 && within && isBare(spelled) ? [placeOf(chunks, spelled)] : [];
      });
    },
  },
  {
    name: 'the consonant y beside vowels alone',
    example: 'open syllables and y',
    counterExample: 'w, x and y',
    doubted: ({ settled, chunks, items }) =>
      settled.flatMap(({ spelled, ids }) => {
        const own = placeOf(chunks, spelled);
        const beside = items.flatMap(({ patterns }, i) => (i === own ? [] : patterns));
        const vowels =
          beside.length > 0 && beside.every((id) => /vowel|syllable/.test(rowOf.get(id)!.family));
        return ids.includes('y') && isBare(spelled) && vowels ? [own] : [];
      }),
  },
  {
    name: 'letters taken for an example',
    example: 'ai (rain, ea)',
    counterExample: 'ai (rain, sail)',
    doubted: (reading) => {
      const taught = new Set(reading.items.flatMap(({ patterns }) => patterns));
      const isLetters = ({ text, mark }: Lexeme) =>
        (mark !== 'none' || !mayBeWord.test(text) || !isWord(text)) && findSpelling(text, mark) !== null;
      // A pattern that several words name may be missing from the items: "ee as in feet - contractions with is".
      const isLost = ({ kind, ids = [] }: Lexeme) =>
        kind === 'meant' && ids.length > 0 && !ids.some((id) => taught.has(id));
      return reading.passed.some(isLetters) || (taught.size > 0 && reading.lexemes.some(isLost))
        ? all(reading)
        : [];
    },
  },
  {
    name: 'what only says where something stands',
    example: 'ck after short a',
    counterExample: 'ck and short a',
    doubted: ({ lexemes, chunks, items }) =>
      lexemes.flatMap(({ kind, text }, i) => {
        if (kind !== 'word' || i === 0 || !joins.test(text)) return [];
        const next = lexemes.slice(i + 1).find((one) => !/^(?:a|an|the|other)$/.test(one.text));
        const at = chunks.findIndex(({ start }) => start === next?.start);
        // "y to i before -es" teaches the change and the ending.
        return at > 0 && items[at]!.patterns.some((id) => !isSuffix(id)) ? [at] : [];
      }),
  },
];

const joins = /^(?:plus|before|after|without)$/;

/** Matches a word with a vowel and a consonant. Two vowels or two consonants alone are letters. */
const mayBeWord = /[aeiouy].*[^aeiouy]|[^aeiouy].*[aeiouy]|^(?:I|a|eye|you)$/;

/** Whether the patterns are a spelling with few meanings, and not a blend or part of a word. */
const isSpelling = (ids: readonly PatternId[]) =>
  ids.length > 0 &&
  ids.length < 4 &&
  ids.every((id) => /vowel|digraph|consonant/.test(rowOf.get(id)!.family));

/** Returns the items of a clause. Doubted items become guesses. `used` is called with the name of each doubt. */
export function doubtItems(
  reading: ClauseReading,
  used: (doubt: string) => void = () => {},
): readonly ReadItem[] {
  const { items } = reading;
  const places = new Set<number>();
  const kept = items.map((item, i) => withList(reading, item, i));
  for (const { name, doubted } of doubts) {
    const found = doubted(reading).filter((i) => items[i]?.status === 'matched');
    if (found.length > 0) used(name);
    for (const i of found) places.add(i);
  }
  return kept.map((item, i) => (places.has(i) ? { ...item, status: 'guessed' } : item));
}

/**
 * Corrects a heading without a colon that was taken for the name of a list. If no later item can be that list, the
 * heading itself is taught, as a guess.
 */
function withList({ chunks, items, settled, lexemes }: ClauseReading, item: ReadItem, i: number): ReadItem {
  const { announces, phrases, spelled } = chunks[i]!;
  const ids = phrases.flatMap((phrase) => phrase.ids);
  const named = lexemes.some(({ kind }) => kind === 'is' || kind === 'list');
  if (item.status !== 'ignored' || named || !announces || spelled.length > 0 || ids.length === 0) return item;
  const behind = items.slice(i + 1).flatMap(({ patterns }) => patterns);
  const listed = phrases.some(({ within }) => behind.some((id) => within?.has(id) === true));
  // "final syllable -ic" names a single syllable that nobody lists.
  const single = settled.every(({ spelled: own }) => own.spelling.letters.length === 1);
  if (listed || settled.length === 0 || !single) return item;
  return { ...item, status: 'guessed', patterns: [...new Set(ids)], headings: phrases };
}
