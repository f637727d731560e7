import type { LessonInput } from './lesson-input.ts';
import type { Picker } from './picker.ts';

/**
 * One column of a block.
 * - `both`: on the pupils' sheet and on the teacher's key. The group can read everything in the column.
 * - `key`: only on the key.
 * - `blank`: the key has the answer, and the pupils' sheet has a line to write on.
 * - `free`: on both, and not limited to words the group can read: a count, a box, letters of a sound, the passage as
 * the teacher chose it, words for an adult at home.
 */
export interface Column {
  /** The heading for the adult; empty where none is needed. */
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
  /** The id, which is stable within the part: `chains`. */
  readonly id: string;
  /** The title for the adult: `Words with ee`. */
  readonly title: string;
  /**
   * The layout of the block.
   * - `table`: rows under headings.
   * - `words`: single words set in columns.
   * - `lines`: sentences, one a line.
   * - `chain`: each row is a chain that leads from one word to the next.
   * - `grid`: rows of boxes to write in.
   * - `passage`: large lines, each with a count at its end.
   * - `cards-6` and `cards-12`: single texts as cards to cut out, six or twelve a page.
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
  /** The reason why the part is empty, in a sentence with the next step; null when the part is not empty. */
  readonly says: string | null;
  /**
   * The number of items that were made, by the id of the choice that asks for a number. Left out where it is always the
   * number asked for.
   */
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
  /** Whether the part is left off a sheet until the teacher adds it. */
  readonly extra?: true;
  /** How the teacher uses the part, in one sentence. */
  readonly use: string;
  /** The choices depend on the suffixes and sounds that the group knows. */
  choices(input: LessonInput): readonly PartChoice[];
  /**
   * Returns the same part for the same input, choices and seed. Never throws. `chosen` returns the value of a choice,
   * or the usual value where the chosen value is not one of the options.
   * `sheet` has the other parts on the sheet; some parts are made from them.
   */
  make(
    input: LessonInput,
    chosen: (id: string) => string,
    picker: Picker,
    sheet?: readonly LessonPart[],
  ): LessonPart;
  /** Whether the part is made from the other parts of the sheet. */
  readonly fromSheet?: true;
}
