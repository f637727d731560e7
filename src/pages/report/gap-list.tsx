import type { CompiledGroup } from '../../analyze/index.ts';
import type { Gap } from '../../analyze/types.ts';
import { patternName } from '../../ui/pattern-name.ts';
import { say } from '../../wording/say.ts';

interface GapListProps {
  readonly gaps: readonly Gap[];
  readonly group: CompiledGroup;
  /** The largest number of words shown for each gap. */
  readonly most?: number;
}

/**
 * Lists the patterns that the group lacks for this text. Each entry says when the group's sequence teaches the pattern,
 * how many words the pattern makes readable, and which words contain the pattern.
 */
export function GapList({ gaps, group, most = Number.POSITIVE_INFINITY }: GapListProps) {
  if (gaps.length === 0) return <p>{say('report.noGaps')}</p>;
  return (
    <ul class="report-gaps">
      {gaps.map(({ pattern, opens, words }) => (
        <li key={pattern}>
          <h3>{patternName(pattern)}</h3>
          <p class="quiet">
            {nameStep(group.stepOf(pattern))}, {nameOpens(opens)}
          </p>
          <p class="report-words" lang="en">
            {words.slice(0, most).join(', ')}
            {words.length > most && ', …'}
          </p>
        </li>
      ))}
    </ul>
  );
}

function nameStep(step: number | null): string {
  return step === null ? say('report.inNoStep') : say('report.atStep', { step });
}

function nameOpens(opens: number): string {
  return opens === 0 ? say('report.onlyWithOthers') : say('report.opensPlaces', { count: opens });
}
