import type { Group, PatternId, Sequence, Tally, WordEntry } from '../analyze/types.ts';

/** A group as a file has it, with the sequence it names. */
export interface VettedGroup {
  readonly group: Group;
  readonly sequence: Sequence | null;
}

/** The figures of a text's report for one group, for tables and programs. */
export interface GroupReport {
  /** The group's name. */
  readonly group: string;
  /** The sequence's id. */
  readonly sequence: string | null;
  readonly step: number;
  /** The `reach` of the tally is null where the text has no words but names. */
  readonly tally: Omit<Tally, 'reach'> & { readonly reach: number | null };
  /** First steps of the sequence at which the text's reach is 95 and 99 percent; null where none is. 0 is before the first. */
  readonly reaches95: number | null;
  readonly reaches99: number | null;
  /** The patterns that open most words come first, each with its words, frequent words first. */
  readonly gaps: readonly NamedGap[];
  /** Every word with its standing, where that was asked for. */
  readonly words?: readonly WordEntry[];
}

export interface NamedGap {
  readonly pattern: PatternId;
  /** The name of the pattern among teachers. */
  readonly label: string;
  readonly opens: number;
  readonly words: readonly string[];
}

/** A text after vetting: a report for each group, in the order of the groups. */
export interface VettedText {
  /** The path as it was given or found. */
  readonly text: string;
  readonly title: string;
  readonly reports: readonly GroupReport[];
}

/** A text that could not be read, with a sentence that says why and what to do. */
export interface FailedText {
  readonly text: string;
  readonly error: string;
}

export type TextRecord = VettedText | FailedText;
