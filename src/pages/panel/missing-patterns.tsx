import type { Gap, PatternId } from '../../analyze/types.ts';
import { GapRows } from '../../ui/gap-list.tsx';
import type { WordLinks } from '../../ui/word-buttons.tsx';
import { say } from '../../wording/say.ts';
import { foldPatterns } from './fold-patterns.ts';

interface MissingPatternsProps {
  readonly gaps: readonly Gap[];
  readonly links: WordLinks;
  readonly onTaught: (pattern: PatternId) => void;
  /** The step that teaches a pattern to the group; null where none does. */
  readonly stepOf: (pattern: PatternId) => number | null;
  readonly step: number;
}

/** What the page asks for and the group lacks: the next steps in sight, the rest folded. */
export function MissingPatterns({ gaps, links, onTaught, stepOf, step }: MissingPatternsProps) {
  if (gaps.length === 0) return null;
  const { next, later, never } = foldPatterns(gaps, stepOf, step);
  const inSequence = next.length + later.length > 0;
  return (
    <section class="missing" aria-labelledby="gaps-title">
      <h2 id="gaps-title">{say('ui.missingPatterns')}</h2>
      {inSequence && (
        <>
          <p class="fold-title">{say('panel.nextSteps', { count: next.length })}</p>
          {next.length > 0 && <GapRows gaps={next} links={links} onTaught={onTaught} stepOf={stepOf} />}
        </>
      )}
      {later.length > 0 && (
        <details open={next.length === 0}>
          <summary class="fold-title">{say('panel.laterSteps', { count: later.length })}</summary>
          <GapRows gaps={later} links={links} onTaught={onTaught} stepOf={stepOf} />
        </details>
      )}
      {never.length > 0 && inSequence && (
        <details>
          <summary class="fold-title">{say('panel.notInSequence', { count: never.length })}</summary>
          <GapRows gaps={never} links={links} onTaught={onTaught} />
        </details>
      )}
      {!inSequence && <GapRows gaps={never} links={links} onTaught={onTaught} />}
    </section>
  );
}
