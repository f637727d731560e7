import { NEXT_STEPS } from '../../analyze/index.ts';
import type { Gap, PatternId } from '../../analyze/types.ts';

/** A missing pattern, with the step of the group's sequence that teaches it; null where none does. */
export interface PlacedGap extends Gap {
  readonly at: number | null;
}

/** Missing patterns by when they are taught: within the next steps, later, and not in the sequence. */
export interface FoldedPatterns {
  readonly next: readonly PlacedGap[];
  readonly later: readonly PlacedGap[];
  readonly never: readonly PlacedGap[];
}

/**
 * Sorts missing patterns by the step that teaches them, first the next to be taught; of one step, and outside of the sequence,
 * those that open most words first, as they come. A pattern of a step that is behind the group is among the next: it is not secure.
 */
export function foldPatterns(
  gaps: readonly Gap[],
  stepOf: (pattern: PatternId) => number | null,
  step: number,
): FoldedPatterns {
  const placed = gaps.map((gap): PlacedGap => ({ ...gap, at: stepOf(gap.pattern) }));
  const taught = placed.filter(({ at }) => at !== null).sort((a, b) => a.at! - b.at!);
  return {
    next: taught.filter(({ at }) => at! <= step + NEXT_STEPS),
    later: taught.filter(({ at }) => at! > step + NEXT_STEPS),
    never: placed.filter(({ at }) => at === null),
  };
}
