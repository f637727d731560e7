import type { Group, PatternId, Sequence, Tally, WordEntry } from '../analyze/types.ts';

/** A group from a file, with the sequence it names. */
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
  /**
   * The first steps of the sequence at which the text's reach is 95 and 99 percent. Null if there is no such step. 0
   * means before the first step.
   */
  readonly reaches95: number | null;
  readonly reaches99: number | null;
  /** The gaps. The patterns that open most words come first. Each pattern has its words, frequent words first. */
  readonly gaps: readonly NamedGap[];
  /** Every word with its standing, if requested. */
  readonly words?: readonly WordEntry[];
}

export interface NamedGap {
  readonly pattern: PatternId;
  /** The name of the pattern among teachers. */
  readonly label: string;
  readonly opens: number;
  readonly words: readonly string[];
}

/** A vetted text: one report for each group, in the order of the groups. */
export interface VettedText {
  /** The path as it was given or found. */
  readonly text: string;
  readonly title: string;
  readonly reports: readonly GroupReport[];
}

/** A text that could not be read, with a sentence that gives the reason and the next step. */
export interface FailedText {
  readonly text: string;
  readonly error: string;
}

export type TextRecord = VettedText | FailedText;
