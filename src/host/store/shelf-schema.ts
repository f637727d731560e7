import * as v from 'valibot';
import type { WordKey } from '../../analyze/types.ts';
import { countSchema, textOrNull } from './schema.ts';

/** A vetted text: its source and its words, but not the text itself. */
export interface ShelfText {
  readonly id: string;
  readonly title: string;
  readonly url: string | null;
  readonly byline: string | null;
  /** The date of the text, as its page or file says it. */
  readonly date: string | null;
  /** The time when the text was put on the shelf, in milliseconds since 1970. */
  readonly shelved: number;
  readonly tags: readonly string[];
  readonly notes: string;
  /** The words, each key once, sorted by code unit, so that their order reveals nothing about the text. */
  readonly words: readonly (readonly [key: WordKey, count: number])[];
  /** The number of tokens left out of the count: numbers, addresses, other scripts. */
  readonly skipped: number;
  /** Whether the text itself is also stored, because the teacher chose so. */
  readonly isKept: boolean;
}

/** A text that is put on the shelf or loaded from it, with its running text if that is kept. */
export interface WholeShelfText extends Omit<ShelfText, 'isKept'> {
  readonly text: string | null;
}

/** A text in the database. The words are one string and the counts are one list, which is quick to read. */
export interface StoredText extends Omit<ShelfText, 'words'> {
  readonly keys: string;
  readonly counts: Uint32Array;
}

const told = {
  title: v.string(),
  url: textOrNull,
  byline: textOrNull,
  date: textOrNull,
  shelved: countSchema,
  tags: v.array(v.string()),
  notes: v.string(),
  skipped: countSchema,
};

const wordCount = v.strictTuple([
  v.pipe(v.string(), v.regex(/^\S+$/)),
  v.pipe(countSchema, v.minValue(1), v.maxValue(2 ** 31 - 1)),
]);

/** A text of the shelf in a file. */
export const wholeTextSchema: v.GenericSchema<unknown, WholeShelfText> = v.object({
  id: v.pipe(v.string(), v.regex(/^[\w-]{1,64}$/)),
  ...told,
  words: v.pipe(
    v.array(wordCount),
    v.check((words) => new Set(words.map(([key]) => key)).size === words.length),
  ),
  text: textOrNull,
});

/** A text of the shelf in the database. */
export const storedTextSchema: v.GenericSchema<unknown, StoredText> = v.object({
  id: v.string(),
  ...told,
  keys: v.string(),
  counts: v.instance(Uint32Array),
  isKept: v.boolean(),
});
