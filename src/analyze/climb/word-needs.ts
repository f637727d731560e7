import { bitOf } from '../catalogue/names.ts';
import { splitKey } from '../homographs/word-key.ts';
import type { Needs } from '../standing/fine-needs.ts';
import { isInitialism } from '../standing/is-initialism.ts';
import { isNameInPlace, ownerOf } from '../standing/is-name.ts';
import { type Weighable, weighWord } from '../standing/weigh-word.ts';
import type { MadeOf, PatternId, WordKey } from '../types.ts';

/** Patterns as row numbers in the catalogue. */
type Rows = readonly number[];

/** The row number of patterns that the catalogue does not have. No group is ever taught such a pattern. */
export const NO_ROW = bitOf.size;

/** What `Needs` says, by rows. */
export interface RowNeeds {
  readonly requires: Rows;
  readonly fine: {
    readonly rest: Rows;
    readonly finer: readonly { readonly row: number; readonly of: Rows }[];
  } | null;
}

/** What `MadeOf` says, by rows. */
export interface RowParts {
  readonly parts: readonly PartNeeds[];
  readonly joint: RowNeeds;
}

interface PartNeeds extends RowNeeds {
  readonly word: string;
  readonly madeOf: RowParts | null;
}

interface ReadingNeeds extends RowNeeds {
  /** A `guess` alone does not make a word readable. A reading with `none` is skipped. */
  readonly source: 'sure' | 'guess' | 'none';
  readonly madeOf: RowParts | null;
}

/**
 * The facts about a word that a climb needs, independent of any group. Everything that follows from the word alone is
 * computed beforehand, and patterns are numbers. Following a word for one more group then takes only a few look-ups in
 * a list.
 */
export interface WordNeeds {
  /** The word in lower case. */
  readonly word: string;
  /** The owner in a possessive (Bram in Bram's), otherwise the word itself. In lower case. */
  readonly owner: string;
  readonly isInitialism: boolean;
  /**
   * Whether the word is a name in its place: `isListedName` for a group that lists the name, `isUnlistedName` for a
   * group that does not.
   */
  readonly isListedName: boolean;
  readonly isUnlistedName: boolean;
  readonly isHomograph: boolean;
  readonly readings: readonly ReadingNeeds[];
}

/** Returns the facts of an analysis on which a climb depends. */
export function needsOfWord(key: WordKey, analysis: Weighable): WordNeeds {
  const parts = splitKey(key);
  const { homograph, usage, readings } = weighWord(analysis);
  const word = parts.word.toLowerCase();
  return {
    word,
    owner: ownerOf(word),
    isInitialism: parts.capital === 'all' && isInitialism(word, usage),
    isListedName: isNameInPlace(parts, usage, true),
    isUnlistedName: isNameInPlace(parts, usage, false),
    isHomograph: homograph,
    readings: readings.map((reading) => ({
      source: reading.source === 'guess' || reading.source === 'none' ? reading.source : 'sure',
      ...rowNeeds(reading),
      madeOf: reading.madeOf && rowParts(reading.madeOf),
    })),
  };
}

function rowParts({ parts, joint, fineJoint }: MadeOf): RowParts {
  return {
    parts: parts.map((part) => ({
      word: part.word,
      ...rowNeeds(part),
      madeOf: part.madeOf ? rowParts(part.madeOf) : null,
    })),
    joint: rowNeeds({ requires: joint, fine: fineJoint ?? null }),
  };
}

function rowNeeds({ requires, fine }: Needs): RowNeeds {
  return {
    requires: requires.map(rowOf),
    fine: fine
      ? {
          rest: fine.rest.map(rowOf),
          finer: fine.finer.map(({ row, of }) => ({ row: rowOf(row), of: of.map(rowOf) })),
        }
      : null,
  };
}

function rowOf(id: PatternId): number {
  return bitOf.get(id) ?? NO_ROW;
}
