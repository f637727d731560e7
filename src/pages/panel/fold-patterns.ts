import { NEXT_STEPS } from '../../analyze/index.ts';
import type { Gap, PatternId } from '../../analyze/types.ts';

/** A missing pattern with the step of the group’s sequence that teaches it, or null if no step does. */
export interface PlacedGap extends Gap {
  readonly at: number | null;
}

/** Missing patterns by when they are taught: in the next steps, later, or never in the sequence. */
export interface FoldedPatterns {
  readonly next: readonly PlacedGap[];
  readonly later: readonly PlacedGap[];
  readonly never: readonly PlacedGap[];
}

/**
 * Sorts missing patterns by the step that teaches them, next step first. Patterns of the same step, and patterns
 * outside the sequence, keep their order: those that make the most words readable come first. A pattern of a step that
 * the group has passed is among the next patterns, since the pattern is not secure.
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
