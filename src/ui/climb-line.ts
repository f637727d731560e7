import type { Climb } from '../analyze/index.ts';
import type { Sequence } from '../analyze/types.ts';

/** One group's climb through a text. */
export interface ClimbLine {
  readonly name: string;
  readonly climb: Climb;
  readonly sequence: Sequence;
  /** The current step of the group. */
  readonly step: number;
}
