import type { LessonInput } from './lesson-input.ts';
import type { Picker } from './picker.ts';

/**
 * One column of a block. `both`: on the pupils' sheet and the teacher's key; everything in it the group can read.
 * `key`: on the key alone. `blank`: the key has the answer, the pupils' sheet a line to write on.
 */
export interface Column {
  /** For the adult; empty where it goes without saying. */
  readonly head: string;
  readonly shows: 'both' | 'key' | 'blank';
}

/** A piece of a lesson sheet. All of it is plain text, so that the teacher can change any of it. */
export interface LessonBlock {
  /** Stable within its part: `chains`. */
  readonly id: string;
  /** For the adult: `Words with ee`. */
  readonly title: string;
  /**
   * `table`: rows under heads; `words`: single words set in columns; `lines`: sentences, one a line;
   * `chain`: each row a chain of words, led from one to the next.
   */
  readonly layout: 'table' | 'words' | 'lines' | 'chain';
  /** One for each cell of a row; for `words`, `lines` and `chain` a single one, which counts for every cell. */
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly string[])[];
  /** What the adult should know before the rows: a rule, what to ask. On the key alone. */
  readonly note?: string;
}

/** A part as it was made. */
export interface LessonPart {
  readonly blocks: readonly LessonBlock[];
  /** Why it is empty, in a sentence with the next step; null when it is not. */
  readonly says: string | null;
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
  /** Depends on the group: which suffixes it knows, which sounds. */
  choices(input: LessonInput): readonly PartChoice[];
  /** The same for the same input, choices and seed. `chosen` gives the value of a choice, the usual one where it is not one of its options. Never throws. */
  make(input: LessonInput, chosen: (id: string) => string, picker: Picker): LessonPart;
}
