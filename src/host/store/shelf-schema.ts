import * as v from 'valibot';
import type { WordKey } from '../../analyze/types.ts';
import { countSchema, textOrNull } from './schema.ts';

/** A vetted text: where it comes from and which words it has, but not the text itself. */
export interface ShelfText {
  readonly id: string;
  readonly title: string;
  readonly url: string | null;
  readonly byline: string | null;
  /** The date of the text, as its page or file says it. */
  readonly date: string | null;
  /** When it was put on the shelf, in milliseconds since 1970. */
  readonly shelved: number;
  readonly tags: readonly string[];
  readonly notes: string;
  /** Sorted by code unit, so that their order tells nothing of the text; every key once. */
  readonly words: readonly (readonly [key: WordKey, count: number])[];
  /** Tokens left out of the count: numbers, addresses, other scripts. */
  readonly skipped: number;
  /** Whether the text itself is kept too, because the teacher said so. */
  readonly isKept: boolean;
}

/** A text on its way to or from the shelf, with its running text where that is kept. */
export interface WholeShelfText extends Omit<ShelfText, 'isKept'> {
  readonly text: string | null;
}

/** As it is in the database: the words in one string and one list of counts, which is quick to read. */
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
