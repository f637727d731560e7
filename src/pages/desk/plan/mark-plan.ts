import type { Change } from './plan-changes.ts';
import { makeTicked, type PlanState, spansOf } from './plan-state.ts';

/** A piece of the text before the plan: plain, or part of a change. */
export interface BeforePiece {
  readonly text: string;
  readonly change: Change | null;
}

/** A piece of the text after the plan: unchanged or inserted. */
export interface AfterPiece {
  readonly text: string;
  readonly isNew: boolean;
}

/**
 * Returns the text of the proposal in pieces, each belonging to at most one change. Two changes can meet, such as a
 * swap in a sentence that may be left out. The piece then belongs to the change that takes out more, as long as that
 * change is ticked; otherwise it belongs to the smaller change.
 */
export function markBefore(plan: PlanState): BeforePiece[] {
  const { proposal, ticked } = plan;
  if (!proposal) return [];
  const spans = proposal.planned.flatMap(({ change }) =>
    spansOf(change, proposal).map(({ from, to }) => ({ from, to: Math.max(to, from), change })),
  );
  const rank = ({ change }: { change: Change }): number => {
    const isLarge = change.kind === 'drop' || change.kind === 'rewrite';
    if (isLarge && ticked.has(change)) return change.kind === 'drop' ? 0 : 1;
    return isLarge ? (change.kind === 'rewrite' ? 3 : 4) : 2;
  };
  const ends = new Set([0, proposal.text.length]);
  for (const { from, to } of spans) ends.add(from).add(to);
  const sorted = [...ends].sort((one, other) => one - other);
  const pieces: BeforePiece[] = [];
  let first = 0;
  const byStart = spans.sort((one, other) => one.from - other.from);
  for (const [i, from] of sorted.entries()) {
    const to = sorted[i + 1];
    if (to === undefined) break;
    while (first < byStart.length && byStart[first]!.to <= from && byStart[first]!.from < from) first++;
    const over = byStart.filter((span, n) => n >= first && span.from <= from && span.to >= to);
    const owner = over.sort((one, other) => rank(one) - rank(other))[0]?.change ?? null;
    const text = proposal.text.slice(from, to);
    const last = pieces.at(-1);
    if (last && last.change === owner) pieces[pieces.length - 1] = { text: last.text + text, change: owner };
    else pieces.push({ text, change: owner });
  }
  return pieces;
}

/** Returns the text with the ticked changes made, in pieces. */
export function markAfter(plan: PlanState): AfterPiece[] {
  const { proposal } = plan;
  if (!proposal) return [];
  const pieces: AfterPiece[] = [];
  let at = 0;
  const put = (text: string, isNew: boolean): void => {
    if (text !== '') pieces.push({ text, isNew });
  };
  for (const { from, to, text } of makeTicked(plan).edits.toSorted(
    (one, other) => one.from - other.from || one.to - other.to,
  )) {
    put(proposal.text.slice(at, from), false);
    put(text, true);
    at = to;
  }
  put(proposal.text.slice(at), false);
  return pieces;
}

/** Returns the text with the ticked changes made. */
export function textAfter(plan: PlanState): string {
  return markAfter(plan)
    .map(({ text }) => text)
    .join('');
}
