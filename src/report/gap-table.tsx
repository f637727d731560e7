import type { CompiledGroup } from '../analyze/index.ts';
import type { Gap } from '../analyze/types.ts';
import { patternLabel } from '../ui/pattern-label.ts';

/** What the group lacks for this text: when its sequence teaches it, what it opens, and in which words it stands. */
export function GapTable({ gaps, group }: { gaps: readonly Gap[]; group: CompiledGroup }) {
  if (gaps.length === 0) return <p>No pattern is missing.</p>;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: wider than a narrow window, it is scrolled by keyboard too
    <section class="report-scroll" aria-label="Table of missing patterns" tabIndex={0}>
      <table class="report-table">
        <thead>
          <tr>
            <th scope="col">Pattern</th>
            <th scope="col">Taught at</th>
            <th scope="col">Opens</th>
            <th scope="col">Words that need it</th>
          </tr>
        </thead>
        <tbody>
          {gaps.map(({ pattern, opens, words }) => (
            <tr key={pattern}>
              <th scope="row">{patternLabel(pattern)}</th>
              <td>{nameStep(group.stepOf(pattern))}</td>
              <td>{opens === 0 ? 'none alone' : `${opens} ${opens === 1 ? 'word' : 'words'}`}</td>
              <td class="report-words">{words.join(', ')}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function nameStep(step: number | null): string {
  return step === null ? 'no step' : `step ${step}`;
}
