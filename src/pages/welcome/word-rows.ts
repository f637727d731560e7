import { createClimber, parseGroup, type WordAnalyzer } from '../../analyze/index.ts';
import type { Sequence } from '../../analyze/types.ts';

/** Words that a group can read after a step was taught, and could not read at the step of the row before. */
export interface WordRow {
  readonly step: number;
  readonly words: readonly string[];
}

const ROWS = 10;
const WORDS = 4;

/**
 * Makes at most ten rows of common words, spread evenly over the steps of a sequence. Each row has harder patterns than
 * the row before: sat and mat are in the first row, and umbrella is in a late row. `words` must be sorted with the
 * commonest first. By-sight words, and words made of them, are left out, since they say nothing about patterns. Each
 * row takes words of its latest steps first, and the commonest words of each step.
 */
export function makeWordRows(
  words: readonly string[],
  engine: WordAnalyzer,
  sequence: Sequence,
): readonly WordRow[] {
  const { steps } = sequence;
  const group = parseGroup({ name: sequence.name, sequence: sequence.id, step: 0 });
  const reads = createClimber(engine, group, sequence);
  const decodes = createClimber(engine, group, {
    ...sequence,
    steps: steps.map((step) => ({ ...step, bySight: [] })),
  });
  const bySight = new Set(steps.flatMap((step) => step.bySight.map((word) => word.toLowerCase())));
  const ofStep = new Map<number, string[]>();
  for (const word of words) {
    if (word.length < 3 || word !== word.toLowerCase() || bySight.has(word)) continue;
    const at = decodes(word).reads;
    if (at && at === reads(word).reads) ofStep.set(at, [...(ofStep.get(at) ?? []), word]);
  }
  const count = Math.min(ROWS, steps.length);
  const ends = Array.from({ length: count }, (_, i) => Math.round(((i + 1) * steps.length) / count));
  return ends
    .map((step, i) => ({ step, words: pickWords(ofStep, ends[i - 1] ?? 0, step) }))
    .filter(({ words }) => words.length > 0);
}

/**
 * Picks one word of each step after `after` up to `step`, the latest steps first, then a second word of each step, and
 * so on.
 */
function pickWords(ofStep: ReadonlyMap<number, readonly string[]>, after: number, step: number): string[] {
  const lists: (readonly string[])[] = [];
  for (let at = step; at > after; at--) lists.push(ofStep.get(at) ?? []);
  const most = Math.max(0, ...lists.map((list) => list.length));
  const picked: string[] = [];
  for (let n = 0; n < most && picked.length < WORDS; n++)
    for (const list of lists) if (list[n] && picked.length < WORDS) picked.push(list[n]!);
  return picked;
}
