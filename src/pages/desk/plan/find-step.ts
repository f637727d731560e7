import { type Analyzer, climbText, createClimber } from '../../../analyze/index.ts';
import type { Group, Sequence } from '../../../analyze/types.ts';
import { countWords } from '../../../passage/count-words.ts';
import type { ShadedLine } from '../../../passage/shade-line.ts';

interface WhoReads {
  readonly engine: Analyzer;
  readonly group: Group;
  readonly sequence: Sequence | null;
  /** The wanted readable share, in percent. */
  readonly target: number;
}

/**
 * Finds the first step of the group's sequence at which a text is as readable as wanted; returns null if no step is
 * enough.
 */
export function findStep(
  text: string,
  shade: (line: string) => ShadedLine,
  { engine, group, sequence, target }: WhoReads,
): number | null {
  if (!sequence) return null;
  const { reach } = climbText(countWords(text, shade), createClimber(engine, group, sequence));
  const step = reach.findIndex((percent) => percent >= target);
  return step < 0 ? null : step;
}
