import type { Sequence } from '../analyze/types.ts';
import { say } from '../wording/say.ts';
import type { ClimbLine } from './climb-line.ts';
import { stepTitle } from './step-title.ts';

/** A table with the figures of climbs, one row for each step. Groups with the same sequence share a table. */
export function ClimbTable({ lines }: { lines: readonly ClimbLine[] }) {
  const bySequence = new Map<Sequence, ClimbLine[]>();
  for (const line of lines) bySequence.set(line.sequence, [...(bySequence.get(line.sequence) ?? []), line]);
  return (
    <>
      {[...bySequence].map(([sequence, shared]) => (
        <section
          key={sequence.id}
          class="climb-scroll"
          aria-label={say('ui.stepsOf', { sequence: sequence.name })}
          // biome-ignore lint/a11y/noNoninteractiveTabindex: wider than a narrow window, it is scrolled by keyboard too
          tabIndex={0}
        >
          <table class="climb-table">
            <caption>{sequence.name}</caption>
            <thead>
              <tr>
                <th scope="col">{say('ui.stepColumn')}</th>
                <th scope="col">{say('ui.teachesColumn')}</th>
                {shared.map(({ name }, i) => (
                  <th key={i} scope="col" class="climb-number">
                    {name}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {[0, ...sequence.steps.map((_, i) => i + 1)].map((step) => (
                <tr key={step}>
                  <td>{step}</td>
                  <td>{stepTitle(sequence, step)}</td>
                  {shared.map((line, i) => (
                    <Figure key={i} line={line} step={step} />
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      ))}
    </>
  );
}

function Figure({ line: { climb, step: now }, step }: { line: ClimbLine; step: number }) {
  const opens = climb.opens[step]!;
  return (
    <td class={step === now ? 'climb-number climb-now' : 'climb-number'}>
      {climb.reach[step]!.toFixed(1)}%
      <span class="climb-opens">
        {step === now && `${say('ui.now')} `}
        {step > 0 && opens > 0 && say('ui.moreWords', { count: opens })}
      </span>
    </td>
  );
}
