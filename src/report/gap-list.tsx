import type { CompiledGroup } from '../analyze/index.ts';
import type { Gap } from '../analyze/types.ts';
import { patternLabel } from '../marks/pattern-label.ts';

/** What the group lacks for this text: when its sequence teaches it, what it opens, and in which words it stands. */
export function GapList({ gaps, group }: { gaps: readonly Gap[]; group: CompiledGroup }) {
  if (gaps.length === 0) return <p>No pattern is missing.</p>;
  return (
    <ul class="report-gaps">
      {gaps.map(({ pattern, opens, words }) => (
        <li key={pattern}>
          <h3>{patternLabel(pattern)}</h3>
          <p class="quiet">
            {nameStep(group.stepOf(pattern))}, {nameOpens(opens)}
          </p>
          <p class="report-words">{words.join(', ')}</p>
        </li>
      ))}
    </ul>
  );
}

function nameStep(step: number | null): string {
  return step === null ? 'in no step' : `step ${step}`;
}

function nameOpens(opens: number): string {
  if (opens === 0) return 'only with others';
  return opens === 1 ? 'opens 1 place' : `opens ${opens} places`;
}
