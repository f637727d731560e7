import type { Outcome } from './score-visit.ts';

/** Returns one line about a page: its figure, its times in milliseconds, and the shares of its story. */
export function describeOutcome({ page, visit, recall, precision, faults }: Outcome): string {
  const cells = [
    page.padEnd(32),
    (visit?.figure == null ? '-' : visit.says).padStart(7),
    `marks ${visit?.marks ?? '-'}`.padEnd(11),
    `figure ${visit?.figure ?? '-'}`.padEnd(12),
    `task ${visit?.longestTask ?? '-'}`.padEnd(10),
    (visit?.scope ?? '').padEnd(9),
    recall === null ? '' : `recall ${recall.toFixed(3)} precision ${precision!.toFixed(3)}`,
  ];
  return [cells.join(' ').trimEnd(), ...faults.map((fault) => `    ${fault}`)].join('\n');
}

/** Returns the report on a whole sweep: first the pages that failed, then all figures together. */
export function describeSweep(outcomes: readonly Outcome[]): string {
  const failed = outcomes.filter(({ faults }) => faults.length > 0);
  const of = (take: (outcome: Outcome) => number | null | undefined): number[] =>
    outcomes
      .map(take)
      .filter((number) => number != null)
      .sort((a, b) => a - b);
  const identical = outcomes.filter(({ visit }) => visit && visit.states[0]!.html === visit.states[2]!.html);
  return [
    failed.length === 0 ? 'No page failed.' : 'Pages that failed:',
    ...failed.map(describeOutcome),
    '',
    `${outcomes.filter(({ visit }) => visit?.figure != null).length} of ${outcomes.length} pages give figures`,
    `${identical.length} of ${outcomes.length} pages are byte-identical after the second press`,
    `first marks, ms:    ${spread(of(({ visit }) => visit?.marks))}`,
    `panel’s figure, ms: ${spread(of(({ visit }) => visit?.figure))}`,
    `longest task, ms:   ${spread(of(({ visit }) => visit?.longestTask))}`,
    `recall:             ${share(of(({ recall }) => recall))}`,
    `precision:          ${share(of(({ precision }) => precision))}`,
  ].join('\n');
}

function spread(sorted: readonly number[]): string {
  if (sorted.length === 0) return 'not told';
  return `median ${at(sorted, 0.5)}, 95th percentile ${at(sorted, 0.95)}, most ${sorted.at(-1)}`;
}

function share(sorted: readonly number[]): string {
  if (sorted.length === 0) return 'nothing expected';
  const mean = sorted.reduce((sum, one) => sum + one, 0) / sorted.length;
  return `median ${at(sorted, 0.5).toFixed(3)}, mean ${mean.toFixed(3)}, 5th percentile ${at(sorted, 0.05).toFixed(3)}`;
}

function at(sorted: readonly number[], part: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * part))]!;
}
