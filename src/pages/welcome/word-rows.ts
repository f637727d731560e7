import { createClimber, parseGroup, type WordAnalyzer } from '../../analyze/index.ts';
import type { Sequence } from '../../analyze/types.ts';

/** Words that a group reads once a step was taught, and could not read at the step of the row before. */
export interface WordRow {
  readonly step: number;
  readonly words: readonly string[];
}

const ROWS = 10;
const WORDS = 4;

/**
 * At most ten rows of common words, each with harder patterns than the row before, spread evenly over the steps of a sequence: sat and mat
 * are in the first, and umbrella in a late one. `words` are the commonest first; by-sight words, and words made of them, are in no
 * row, since they say nothing about patterns. A row takes the words of its latest steps, and of each step the commonest.
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

/** One word of each step behind `after` up to `step`, the latest steps first; then their second words, and so on. */
function pickWords(ofStep: ReadonlyMap<number, readonly string[]>, after: number, step: number): string[] {
  const lists: (readonly string[])[] = [];
  for (let at = step; at > after; at--) lists.push(ofStep.get(at) ?? []);
  const most = Math.max(0, ...lists.map((list) => list.length));
  const picked: string[] = [];
  for (let n = 0; n < most && picked.length < WORDS; n++)
    for (const list of lists) if (list[n] && picked.length < WORDS) picked.push(list[n]!);
  return picked;
}
