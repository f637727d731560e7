import { bitOf } from '../catalogue/names.ts';
import { splitKey } from '../homographs/word-key.ts';
import type { Needs } from '../standing/fine-needs.ts';
import { isInitialism } from '../standing/is-initialism.ts';
import { isNameInPlace, ownerOf } from '../standing/is-name.ts';
import { type Weighable, weighWord } from '../standing/weigh-word.ts';
import type { MadeOf, PatternId, WordKey } from '../types.ts';

/** Patterns by their rows in the catalogue. */
type Rows = readonly number[];

/** The row of patterns that the catalogue does not have: no group comes to them. */
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
  /** `guess` reads nothing by itself, `none` is no reading. */
  readonly source: 'sure' | 'guess' | 'none';
  readonly madeOf: RowParts | null;
}

/**
 * All that a climb has to know of a word, without the group: whatever follows from the word alone is found beforehand, and a pattern is a
 * number, so that following a word for one more group is a few look-ups in a list.
 */
export interface WordNeeds {
  /** Lower case. */
  readonly word: string;
  /** Whom it belongs to: Bram of Bram's; else the word. Lower case. */
  readonly owner: string;
  readonly isInitialism: boolean;
  /** Whether it is a name in its place for a group that lists it, and for one that does not. */
  readonly isListedName: boolean;
  readonly isUnlistedName: boolean;
  readonly isHomograph: boolean;
  readonly readings: readonly ReadingNeeds[];
}

/** Takes from an analysis what a climb depends on. */
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
