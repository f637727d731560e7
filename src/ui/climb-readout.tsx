import { say } from '../wording/say.ts';
import type { ClimbLine } from './climb-line.ts';
import { stepTitle } from './step-title.ts';

/** The figures of the step under the pointer. The table has the same figures for readers who use no pointer. */
export function ClimbReadout({ lines, step }: { lines: readonly ClimbLine[]; step: number | null }) {
  const there = step === null ? [] : lines.filter(({ climb }) => step < climb.reach.length);
  const sequences = new Set(there.map(({ sequence }) => sequence));
  return (
    <p class="climb-readout" aria-hidden="true" data-screen>
      {step === null ? (
        <span class="quiet">{say('ui.pointAtStep')}</span>
      ) : (
        <>
          {sequences.size === 1
            ? say('ui.stepTitled', { step, title: stepTitle(there[0]!.sequence, step) })
            : say('ui.step', { step })}
          :{' '}
          {there
            .map(
              ({ name, climb }) =>
                `${name} ${climb.reach[step]!.toFixed(1)}%${gain(climb.opens[step]!, step)}`,
            )
            .join('; ')}
        </>
      )}
    </p>
  );
}

function gain(opens: number, step: number): string {
  if (step === 0 || opens === 0) return '';
  return `, ${say('ui.opensWords', { count: opens })}`;
}
