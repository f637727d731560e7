import { catalogue } from '../catalogue/catalogue.ts';
import type { Rule } from '../rule.ts';
import type { GroupOptions, Pattern } from '../types.ts';
import { addBit, hasBit, type PatternBits } from './pattern-bits.ts';
import {
  isAffix,
  isBlend,
  isOpenO,
  isPlainW,
  isShortO,
  isSyllableType,
  isWeakVowel,
  isWh,
  lettersOfEnding,
} from './pattern-roles.ts';

type FollowOptions = Required<
  Pick<GroupOptions, 'schwa' | 'shortOMerged' | 'wh' | 'blends' | 'syllableTypes'>
>;

/** A group's knowledge before the rules add any rows. */
export interface Known {
  readonly taught: PatternBits;
  readonly options: FollowOptions;
  /** The letters of all taught patterns except weak vowels and affixes. */
  readonly fullSpellings: ReadonlySet<string>;
  readonly hasShortO: boolean;
  readonly hasPlainW: boolean;
}

/** A row of the catalogue that a group may know without a lesson on it. */
interface FollowPlace {
  readonly row: Pattern;
  readonly known: Known;
}

/**
 * A rule by which a row follows from other rows, or from an option of the group alone. Each example has the taught
 * patterns, the option and the row.
 */
export interface FollowRule extends Rule<FollowPlace> {
  /** Returns whether the rule is for a row, whatever a group knows. */
  readonly isFor: (row: Pattern) => boolean;
}

/** The rules by which rows follow. A row is known if any of these rules applies to it. */
export const FOLLOW_RULES: readonly FollowRule[] = [
  {
    name: 'schwas count as known',
    example: 'short-e, schwa taught: schwa-a',
    counterExample: 'short-e, schwa strict: schwa-a',
    isFor: isWeakVowel,
    applies: ({ known }) => known.options.schwa === 'taught',
  },
  {
    name: 'the spelling of a schwa is taught in a full reading',
    example: 'short-a, schwa flex: schwa-a',
    counterExample: 'short-e, schwa flex: schwa-a',
    isFor: isWeakVowel,
    applies: ({ row, known }) => known.options.schwa === 'flex' && known.fullSpellings.has(row.letters),
  },
  {
    name: 'an ending is a word by itself and its letters are taught',
    example: 't ee n, schwa strict: suffix-teen',
    counterExample: 't n, schwa strict: suffix-teen',
    isFor: (row) => lettersOfEnding(row) !== null,
    applies: ({ row, known }) => lettersOfEnding(row)!.every((id) => hasBit(known.taught, id)),
  },
  {
    name: 'the o of dog is one sound with short o',
    example: 'short-o, shortOMerged true: o-aw',
    counterExample: 'short-o, shortOMerged false: o-aw',
    isFor: isOpenO,
    applies: ({ known }) => known.options.shortOMerged && known.hasShortO,
  },
  {
    name: 'wh is one sound with w',
    example: 'w, wh free: wh',
    counterExample: 'w, wh counted: wh',
    isFor: isWh,
    applies: ({ known }) => known.options.wh === 'free' && known.hasPlainW,
  },
  {
    name: 'blends need no lesson',
    example: 'b l, blends free: start-bl',
    counterExample: 'b l, blends counted: start-bl',
    isFor: isBlend,
    applies: ({ known }) => known.options.blends === 'free',
  },
  {
    name: 'syllable types need no lesson',
    example: 'short-a, syllableTypes free: type-closed',
    counterExample: 'short-a, syllableTypes counted: type-closed',
    isFor: isSyllableType,
    applies: ({ known }) => known.options.syllableTypes === 'free',
  },
];

const rowsOfRules = FOLLOW_RULES.map((rule) => ({ rule, rows: catalogue.filter(rule.isFor) }));

/**
 * Adds the rows that follow from the taught rows. No row is ever removed, so that a group that knows more never reads
 * less.
 */
export function addWhatFollows(taught: PatternBits, options: FollowOptions): void {
  const known = readKnown(taught, options);
  for (const { rule, rows } of rowsOfRules)
    for (const row of rows) if (rule.applies({ row, known })) addBit(taught, row.id);
}

/** Returns a group's knowledge in the form that the rules use. */
export function readKnown(taught: PatternBits, options: FollowOptions): Known {
  const told = catalogue.filter(({ id }) => hasBit(taught, id));
  return {
    taught,
    options,
    fullSpellings: new Set(
      told.filter((row) => !isWeakVowel(row) && !isAffix(row)).flatMap((row) => row.letters.split(' ')),
    ),
    hasShortO: told.some(isShortO),
    hasPlainW: told.some(isPlainW),
  };
}
