import type { LessonInput } from './lesson-input.ts';
import type { Picker } from './picker.ts';

/**
 * One column of a block. `both`: on the pupils' sheet and the teacher's key; everything in it the group can read.
 * `key`: on the key alone. `blank`: the key has the answer, the pupils' sheet a line to write on. `free`: on both, and not held to
 * what the group can read: a count, a box, letters of a sound, the passage as the teacher chose it, words for an adult at home.
 */
export interface Column {
  /** For the adult; empty where it goes without saying. */
  readonly head: string;
  readonly shows: 'both' | 'key' | 'blank' | 'free';
}

export const LAYOUTS = [
  'table',
  'words',
  'lines',
  'chain',
  'grid',
  'passage',
  'cards-6',
  'cards-12',
] as const;

/** A piece of a lesson sheet. All of it is plain text, so that the teacher can change any of it. */
export interface LessonBlock {
  /** Stable within its part: `chains`. */
  readonly id: string;
  /** For the adult: `Words with ee`. */
  readonly title: string;
  /**
   * `table`: rows under heads; `words`: single words set in columns; `lines`: sentences, one a line;
   * `chain`: each row a chain of words, led from one to the next; `grid`: rows of boxes to write in; `passage`: large lines,
   * each with a count at its end; `cards-6` and `cards-12`: single texts as cards to cut out, so many a page.
   */
  readonly layout: (typeof LAYOUTS)[number];
  /** A column for each cell of a row; for `words`, `lines` and `chain` a single column, which counts for every cell. */
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly string[])[];
  /** A note for the adult before the rows: a rule, a question to ask. It is on the key alone. */
  readonly note?: string;
}

/** A part as it was made. */
export interface LessonPart {
  readonly blocks: readonly LessonBlock[];
  /** Why it is empty, in a sentence with the next step; null when it is not. */
  readonly says: string | null;
  /** How many were made of what a choice asks a number of, by the id of the choice; left out where it is always as many. */
  readonly made?: Readonly<Record<string, number>>;
}

/** Something the teacher may choose about a part. */
export interface PartChoice {
  readonly id: string;
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  /** The value where nothing was chosen. */
  readonly usual: string;
}

/** Makes one part of a lesson sheet. */
export interface PartMaker {
  /** Stable: it is stored. */
  readonly id: string;
  readonly title: string;
  /** Not on a sheet until the teacher puts it there. */
  readonly extra?: true;
  /** The teacher's use of it, in one sentence. */
  readonly use: string;
  /** Depends on the group: which suffixes it knows, which sounds. */
  choices(input: LessonInput): readonly PartChoice[];
  /**
   * The same for the same input, choices and seed. `chosen` gives the value of a choice, the usual one where it is not one of its options. Never throws.
   * `sheet` has the other parts that are on the sheet: some are made from them.
   */
  make(
    input: LessonInput,
    chosen: (id: string) => string,
    picker: Picker,
    sheet?: readonly LessonPart[],
  ): LessonPart;
  /** Made from the other parts of the sheet. */
  readonly fromSheet?: true;
}
