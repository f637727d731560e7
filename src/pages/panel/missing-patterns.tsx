import type { Gap, PatternId } from '../../analyze/types.ts';
import { GapRows } from '../../ui/gap-list.tsx';
import type { WordLinks } from '../../ui/word-buttons.tsx';
import { say } from '../../wording/say.ts';
import { foldPatterns } from './fold-patterns.ts';

interface MissingPatternsProps {
  readonly gaps: readonly Gap[];
  readonly links: WordLinks;
  readonly onTaught: (pattern: PatternId, isTaught: boolean) => void;
  /** Returns the step that teaches a pattern to the group, or null if no step does. */
  readonly stepOf: (pattern: PatternId) => number | null;
  readonly step: number;
}

/**
 * Shows the patterns that the page needs and the group lacks. Patterns of the next steps are visible, and all others
 * are folded.
 */
export function MissingPatterns({ gaps, links, onTaught, stepOf, step }: MissingPatternsProps) {
  const { next, later, never } = foldPatterns(gaps, stepOf, step);
  const inSequence = next.length + later.length > 0;
  const rows = { links, onTaught };
  // The rows are rendered even if there are no gaps, since rows that were just ticked stay for a while.
  return (
    <section class="missing" aria-labelledby="gaps-title">
      <h2 id="gaps-title">{say('ui.missingPatterns')}</h2>
      <div class="fold">
        <p class="fold-title" hidden={!inSequence}>
          {say('panel.nextSteps', { count: next.length })}
        </p>
        <GapRows {...rows} gaps={next} stepOf={stepOf} />
      </div>
      <details class="fold" open={next.length === 0}>
        <summary class="fold-title">{say('panel.laterSteps', { count: later.length })}</summary>
        <GapRows {...rows} gaps={later} stepOf={stepOf} />
      </details>
      <details class="fold" open={!inSequence}>
        <summary class="fold-title">{say('panel.notInSequence', { count: never.length })}</summary>
        <GapRows {...rows} gaps={never} />
      </details>
    </section>
  );
}
